/** Words for faults that only the set-out or the pieces can show. Each says what is wrong and what is allowed. */
export const layoutFaults = {
  'fault.pivot-wedge': 'leaves {angle} between the funnel and the alley at the pivot post, must be over 0°: a funnel angle over the sweep less 180°',
  'fault.funnel-short': 'the corner at the pivot post takes {corner} of the funnel and leaves {left}, 24" at least must be left',
  'fault.alley-short': 'the corner at the pivot post takes {corner} of the alley\'s last run and leaves {left} of its fence, 24" at least must be left',
  'fault.mouth-corner': 'the fences of the funnel and of the chute never meet at the mouth, fences of more alike rails and posts or a greater funnel angle do',
  'fault.wall-radius': 'the {side} fence of {run} is {thickness} thick outward, must be less than the radius of its face, {radius}',
  'fault.bay-short': 'the {side} fence of {run} leaves {left} between two posts, too short for a rail: more than {least} is needed',
  'fault.bays-many': '{bays} bays in the whole facility, 1 to {most} are allowed',
  'fault.bay-over-stock': 'a bay of the {side} fence of {run} needs a rail of {length}, the longest stock of {section} is {stock}',
  'fault.shared-post-thin': 'a coped rail of {rail} on the {side} side of {run} meets a post of {post} that it shares with another fence, must be thinner than that post',
  'fault.skin-over-stock': 'a bay of the {side} fence of {run} needs a sheet of {length} by {height}, no stock sheet holds it: a bay no longer than {most} is needed',
  'fault.skin-too-tall': 'the {side} fence of {run} needs a sheet {height} tall, no stock sheet holds it in courses that part on its rails: a taller stock sheet or closer rails are needed',
} as const;
