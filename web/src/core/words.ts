/** A number with its noun. */
export const many = (count: number, one: string, several = `${one}s`): string => `${count} ${count === 1 ? one : several}`;
