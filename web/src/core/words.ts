/** A verdict that rests on findings alone: that nothing fails is no yes while no trial stands behind it. */
export const verdictWords = (verdict: string): string => (verdict === "works" ? "nothing found against it" : verdict);

/** A number with its noun. */
export const many = (count: number, one: string, several = `${one}s`): string => `${count} ${count === 1 ? one : several}`;
