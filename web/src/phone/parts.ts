/** What the phone's page is made of. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  words = "",
  className = "",
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.textContent = words;
  made.className = className;
  return made;
}

export function button(words: string, className: string, act: () => void): HTMLButtonElement {
  const made = element("button", words, className);
  made.type = "button";
  made.addEventListener("click", act);
  return made;
}

export function chosen(words: string, options: [string, string][], value: string, act: (value: string) => void): HTMLElement {
  const label = element("label", words);
  const select = element("select");
  for (const [key, text] of options) {
    const option = element("option", text);
    option.value = key;
    option.selected = key === value;
    select.append(option);
  }
  select.addEventListener("change", () => {
    act(select.value);
  });
  label.append(select);
  return label;
}
