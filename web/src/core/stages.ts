/** Stages of the work in a maker's words; what a maker called it where it is none. */
const STAGES: Record<string, string> = {
  cut: "cut and clean",
  print: "print",
  dress: "paint, pictures, cloth",
  build: "glue and put together",
  try: "try",
  pack: "pack",
};

export const stageWords = (name: string): string => STAGES[name] ?? name.replaceAll("-", " ");
