/*
 * A canvas over a drawing, for what changes with every frame: a browser lays out sixty texts of a picture anew each time one of them changes, and paints them
 * on a canvas in a tenth of that time. It measures in the units of the drawing below, takes its colours from the style sheet, and hides nothing: what it
 * writes stands in the tables as well.
 */
const Brush = (() => {
  "use strict";

  const NARROW = "(max-width: 40rem)";
  const COLOURS = ["paper", "raised", "text", "soft", "line", "link", "tension", "compression"];

  /* again: called where the size or the colours of the page change. */
  function make(below, again) {
    const canvas = document.createElement("canvas");
    canvas.setAttribute("aria-hidden", "true");
    below.after(canvas);
    /* Drawn by the processor, small as it is: handing it to another one costs more. */
    const brush = { canvas, below, pen: canvas.getContext("2d", { willReadFrequently: true }), colours: {}, narrow: false, units: 1, ratio: 1 };
    const renew = () => {
      measure(brush);
      again();
    };
    new ResizeObserver(renew).observe(below);
    for (const query of [NARROW, "(prefers-color-scheme: dark)", "print"]) {
      matchMedia(query).addEventListener("change", renew);
    }
    measure(brush);
    return brush;
  }

  function measure(brush) {
    const { canvas, below } = brush;
    const style = getComputedStyle(below);
    COLOURS.forEach((name) => (brush.colours[name] = style.getPropertyValue(`--${name}`).trim()));
    brush.font = style.fontFamily;
    brush.narrow = matchMedia(NARROW).matches;
    brush.units = below.viewBox.baseVal.width || 1;
    brush.ratio = below.clientWidth / brush.units;
    const density = Math.min(3, devicePixelRatio || 1);
    canvas.width = Math.round(below.clientWidth * density);
    canvas.height = Math.round(below.clientHeight * density);
    brush.scale = canvas.width / brush.units;
    brush.written = "";
  }

  function clear(brush) {
    const { pen, canvas, scale } = brush;
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.clearRect(0, 0, canvas.width, canvas.height);
    pen.setTransform(scale, 0, 0, scale, 0, 0);
    pen.textAlign = "center";
    pen.lineJoin = "round";
  }

  /* A path through points; dash in the units of the drawing. */
  function line(brush, points, colour, width, dash = [], cap = "butt") {
    const { pen } = brush;
    pen.beginPath();
    points.forEach(([x, y], i) => (i === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
    pen.setLineDash(dash);
    pen.lineCap = cap;
    pen.lineWidth = width;
    pen.strokeStyle = brush.colours[colour];
    pen.stroke();
  }

  function disc(brush, x, y, radius, fill, rim = "paper", width = 0) {
    const { pen } = brush;
    pen.beginPath();
    pen.arc(x, y, radius, 0, 2 * Math.PI);
    pen.fillStyle = brush.colours[fill];
    pen.fill();
    if (width > 0) {
      pen.setLineDash([]);
      pen.lineWidth = width;
      pen.strokeStyle = brush.colours[rim];
      pen.stroke();
    }
  }

  /* The plate of a text: left, top, width, height. */
  function plateOf(words, x, y, size) {
    const half = 0.27 * size * words.length + 2;
    return [x - half, y - 0.55 * size, 2 * half, 1.1 * size];
  }

  const overlap = (a, b) => a[0] < b[0] + b[2] && b[0] < a[0] + a[2] && a[1] < b[1] + b[3] && b[1] < a[1] + a[3];

  /* A text on a plate of the paper's colour, so that it is read where it crosses a member. */
  function text(brush, words, x, y, colour, size, bold = false) {
    const { pen, colours } = brush;
    const font = `${bold ? "bold " : ""}${size}px ${brush.font}`;
    if (brush.written !== font) {
      pen.font = font;
      brush.written = font;
    }
    pen.fillStyle = colours.paper;
    pen.fillRect(...plateOf(words, x, y, size));
    pen.fillStyle = colours[colour];
    pen.fillText(words, x, y + 0.36 * size);
  }

  return { make, measure, clear, line, disc, text, plateOf, overlap };
})();
