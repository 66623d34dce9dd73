// Builds pieces of the page. Text is always text, never markup.

/** An element with attributes, handlers (onclick) and children; what is null or false is left out. */
export function make(tag, attributes, ...children) {
  const [name, ...classes] = tag.split('.');
  const element = document.createElement(name || 'div');
  if (classes.length) element.className = classes.join(' ');
  for (const [key, value] of Object.entries(attributes ?? {})) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith('on')) element.addEventListener(key.slice(2), value);
    else element.setAttribute(key, value === true ? '' : value);
  }
  put(element, children);
  return element;
}

/** Replaces all that is in an element. */
export function fill(element, ...children) {
  element.replaceChildren();
  put(element, children);
}

function put(element, children) {
  for (const child of children.flat(Infinity)) {
    if (child !== null && child !== undefined && child !== false) element.append(child);
  }
}

const SVG = 'http://www.w3.org/2000/svg';

/** The same for a piece of a drawing. */
export function draw(tag, attributes, ...children) {
  const element = document.createElementNS(SVG, tag);
  for (const [key, value] of Object.entries(attributes ?? {})) element.setAttribute(key, value);
  put(element, children);
  return element;
}

/** A button that a glove hits. */
export function button(words, press, kind = '') {
  return make('button' + (kind ? '.' + kind : ''), { type: 'button', onclick: press }, words);
}

/** Ten past nine as 09:10. */
export function clock(at) {
  const time = new Date(at);
  return Number.isNaN(time.getTime()) ? '' : time.toTimeString().slice(0, 5);
}

/** 1 step, 2 steps. */
export function count(number, one, many) {
  return number + ' ' + (number === 1 ? one : many ?? one + 's');
}
