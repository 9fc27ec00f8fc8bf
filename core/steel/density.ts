/** Weight of steel, lb per cubic inch: 490 lb per cubic foot, the figure behind pipe's 10.69·(OD - wall)·wall lb/ft (ASME B36.10M). */
export const STEEL_DENSITY = 0.2836;
