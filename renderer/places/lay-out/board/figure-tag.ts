/** The figure that stands beside the hand while it moves. */
export interface FigureTag {
  /** Pixels from the board's upper left corner. */
  show(text: string, x: number, y: number): void;
  hide(): void;
}

export function figureTag(element: HTMLElement): FigureTag {
  return {
    show: (text, x, y) => {
      element.hidden = false;
      element.textContent = text;
      element.style.transform = `translate(${x.toFixed(0)}px, ${y.toFixed(0)}px)`;
    },
    hide: () => { element.hidden = true; },
  };
}
