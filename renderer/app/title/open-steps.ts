export const stepsId = 'steps';

/** Opens the list of steps, or closes it. */
export const openSteps = () => void document.getElementById(stepsId)?.togglePopover();
