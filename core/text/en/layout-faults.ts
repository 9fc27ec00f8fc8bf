/** Words for faults that only the set-out or the pieces can show. Each says what is wrong and what is allowed. */
export const layoutFaults = {
  'fault.pivot-wedge': 'leaves {angle} between the funnel and the alley at the pivot post, must be over 0°: a funnel angle over the sweep less 180°',
  'fault.funnel-short': 'the corner at the pivot post takes {corner} of the funnel and leaves {left}, must be 24" at least',
  'fault.alley-short': 'the corner at the pivot post takes {corner} of the alley\'s last run and leaves {left} of its fence, must be 24" at least',
  'fault.mouth-corner': 'the fences of the funnel and of the chute never meet at the mouth, must be more alike in rails and posts or at a greater funnel angle',
  'fault.wall-radius': 'the {side} fence of {run} is {thickness} thick outward, must be less than the radius of its face, {radius}',
  'fault.bay-short': 'the {side} fence of {run} leaves {left} between two posts, too short for a rail: must be over {least}',
  'fault.bays-many': '{bays} bays in the whole facility, 1 to {most} are allowed',
  'fault.bay-over-stock': 'a bay of the {side} fence of {run} needs {length} of {section} for a rail, must be within its longest stock of {stock}',
  'fault.shared-post-thin': 'a coped rail of {rail} on the {side} side of {run} meets a post of {post} that it shares with another fence, must be thinner than that post',
  'fault.rails-close-slope': 'the rows of the {side} fence of {run} are {apart} apart square to its slope of {slope}, must be {least} at least: fewer rails or a flatter ramp are allowed',
  'fault.skin-over-stock': 'a bay of the {side} fence of {run} needs a sheet of {length} by {height}, no stock sheet holds it: must be no longer than {most}',
  'fault.skin-too-tall': 'the {side} fence of {run} is solid for {height}, no stock sheet holds it in courses that part on its rails: a taller stock sheet or closer rails are allowed',
  'fault.gate-skin': 'no stock sheet holds the skin of the gate in panels that part on its bars: a larger stock sheet or a smaller gate is allowed',
  'fault.hinge-post-coped': 'the {side} fence of {run} is coped, and its panels end on posts all alike; allowed is no hinge post of its own there, or a lapped fence',
  'fault.opening-fence': 'there is no fence on the {side} side of {run}; allowed is {allowed}',
  'fault.opening-beyond': '{at} lies beyond the end of {run}; allowed is 0 to {length}',
} as const;
