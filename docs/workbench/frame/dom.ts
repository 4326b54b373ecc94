/** What may stand inside an element. */
export type Child = Node | string | number | null | undefined | readonly Child[];

type Attributes = Readonly<
  Record<string, string | number | boolean | null | undefined | ((event: Event) => void)>
>;

/** An element with attributes and children; `onclick` and the like take functions, `false` and `null` leave an attribute out. */
export function h<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  dress(element, attributes);
  append(element, children);
  return element;
}

/** The same for drawings. */
export function s(name: string, attributes: Attributes = {}, ...children: Child[]): SVGElement {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  dress(element, attributes);
  append(element, children);
  return element;
}

/** The element of the page with an id; its absence is a mistake in the page. */
export function byId<Sought extends HTMLElement = HTMLElement>(id: string): Sought {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no element '${id}'`);
  return element as Sought;
}

/** Puts new content in the place of the old. */
export function fill(element: Element, ...children: Child[]): void {
  element.replaceChildren();
  append(element, children);
}

function dress(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (typeof value === 'function') element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : String(value));
  }
}

function append(element: Element, children: readonly Child[]): void {
  for (const child of children) {
    if (child === null || child === undefined) continue;
    if (Array.isArray(child)) append(element, child);
    else element.append(child instanceof Node ? child : String(child));
  }
}
