/* Figures as the tables print them, and elements made without markup, so that a name stays text. */
const Figures = (() => {
  "use strict";

  /* So many decimals; what rounds to zero has no sign, and a minus is a minus. */
  function fixed(value, decimals) {
    const text = value.toFixed(decimals);
    return Number(text) === 0 ? (0).toFixed(decimals) : text.replace("-", "\u2212");
  }

  /* Factors are cut, never rounded up. */
  function cut(value, decimals) {
    const scale = 10 ** decimals;
    return (Math.floor(Math.round(value * scale * 1e6) / 1e6) / scale).toFixed(decimals);
  }

  const force = (facts, newtons, decimals = 2) => fixed(newtons / facts.force.newtons, decimals);
  const length = (facts, metres, decimals = 2) => fixed(metres / facts.length.metres, decimals);

  /* Written only where it changes: what a browser need not lay out again costs nothing. */
  function say(element, text) {
    if (element.textContent !== text) {
      element.textContent = text;
    }
  }

  function html(name, text = "", attributes = {}) {
    const element = document.createElement(name);
    element.textContent = text;
    for (const [key, value] of Object.entries(attributes)) {
      element.setAttribute(key, value);
    }
    return element;
  }

  function svg(name, attributes = {}, text = "") {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(attributes)) {
      element.setAttribute(key, typeof value === "number" ? String(Math.round(value * 100) / 100) : value);
    }
    if (text !== "") {
      element.textContent = text;
    }
    return element;
  }

  /* Long names are cut where they are drawn; lists and tables hold them whole. */
  const short = (name, most = 14) => ([...name].length > most ? `${[...name].slice(0, most - 1).join("")}\u2026` : name);

  return { fixed, cut, force, length, say, html, svg, short };
})();
