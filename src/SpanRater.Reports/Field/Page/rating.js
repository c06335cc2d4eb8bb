/*
 * The factor from the room and the live effect that the engine gave, and what posting follows from it, by the engine's rules. Knows no page.
 */
const Rating = (() => {
  "use strict";

  const US_TON = 2000 * 4.4482216152605;
  const LEAST_FACTOR = 0.3;

  /* Without the last bits, in which two ways to the same number differ. */
  const steady = (value) => Math.round(value * 1e9) / 1e9;

  /* RF = room / (factor * |live| * (1 + impact)); 0 where the dead load leaves no room, null where nothing is loaded or a datum is missing. */
  function factorOf(room, liveFactor, live, impact) {
    if (room !== null && room <= 0) {
      return 0;
    }
    return room === null || liveFactor === null || live === null || impact === null || live === 0 ? null : room / (liveFactor * Math.abs(live) * (1 + impact));
  }

  /* Safe load in newtons by the rule of the posting, "product" or "reduced", and what it comes to. */
  function postingOf(weight, factor, rule) {
    const enough = steady(factor) >= 1;
    const barred = !enough && (steady(factor) <= 0 || (rule === "reduced" && steady(factor) < LEAST_FACTOR));
    const safe = enough || rule === "product" ? factor * weight : Math.max(0, (weight / 0.7) * (factor - LEAST_FACTOR));
    return { safe, tons: Math.floor(steady(safe / US_TON)), verdict: enough ? "notNeeded" : barred ? "barred" : "posted" };
  }

  return { factorOf, postingOf, US_TON };
})();
