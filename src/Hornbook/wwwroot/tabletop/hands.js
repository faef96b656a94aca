// Pointer and keys on the sheet. Places are sent in the drawing's own units, millimetres of the bench.
// Only one move is on its way at a time: what the pointer does meanwhile is folded into the next one, so that the
// drawing never lags behind a queue. All else is sent at once, the end of a drag too: the program does things in the
// order in which they are sent, so that a hand that is quicker than the drawing undoes the drag that it has ended, and
// its next drag holds its own thing.

const keys = new Set([
  'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'PageUp', 'PageDown', 'Home',
  ...'lrudcafLRUDCAF']);

/** Milliseconds from a move to its drawing, the latest last; kept short. For measurement only. */
export const roundTrips = [];

let detach = () => { };

export function attach(rootId, hands) {
  detach();
  const root = document.getElementById(rootId);
  const gone = new AbortController();
  detach = () => gone.abort();
  let held = null;
  let typing = null;

  root.addEventListener('pointerdown', event => {
    const grip = event.target.closest('[data-grip]');
    if (!grip || event.button !== 0 || held) { return; }
    // The scale of the first touch holds for the whole drag: a line of text that grows elsewhere must not move the hand.
    const toSheet = grip.ownerSVGElement.getScreenCTM().inverse();
    held = { toSheet, pointer: event.pointerId, waiting: null, busy: true };
    grip.setPointerCapture(event.pointerId);
    grip.focus({ preventScroll: true });
    event.preventDefault();
    const { end, view } = grip.closest('[data-end]').dataset;
    const at = place(toSheet, event);
    const mine = held;
    hands.invokeMethodAsync('Grasp', end, grip.dataset.grip, view, at.x, at.y).finally(() => drawn(mine));
  }, { signal: gone.signal });

  root.addEventListener('pointermove', event => {
    if (!held || event.pointerId !== held.pointer) { return; }
    held.waiting = { ...place(held.toSheet, event), free: event.altKey, since: performance.now() };
    if (!held.busy) { follow(held); }
  }, { signal: gone.signal });

  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
    root.addEventListener(end, event => {
      if (!held || event.pointerId !== held.pointer) { return; }
      const mine = held;
      held = null;
      if (mine.waiting) { follow(mine); }
      hands.invokeMethodAsync('Release');
    }, { signal: gone.signal });
  }

  root.addEventListener('keydown', event => {
    const grip = event.target.closest('[data-grip]');
    if (!grip || !keys.has(event.key) || event.ctrlKey || event.altKey || event.metaKey) { return; }
    event.preventDefault();
    const { end, view } = grip.closest('[data-end]').dataset;
    hands.invokeMethodAsync('Press', end, grip.dataset.grip, view, event.key, event.shiftKey);
  }, { signal: gone.signal });

  // Undo and redo from anywhere, except from a field in which something is typed that was not taken yet: there the browser's own holds.
  root.addEventListener('input', event => { typing = event.target; }, { signal: gone.signal });
  root.addEventListener('change', () => { typing = null; }, { signal: gone.signal });
  document.addEventListener('keydown', event => {
    const redo = event.shiftKey || event.key.toLowerCase() === 'y';
    if (!(event.ctrlKey || event.metaKey) || event.altKey || !/^[zy]$/i.test(event.key) || typing === document.activeElement) { return; }
    event.preventDefault();
    if (!held) { hands.invokeMethodAsync('Travel', redo); }
  }, { signal: gone.signal });

  function follow(drag) {
    const { x, y, free, since } = drag.waiting;
    drag.waiting = null;
    drag.busy = true;
    hands.invokeMethodAsync('Follow', x, y, free).then(() => {
      roundTrips.push(performance.now() - since);
      if (roundTrips.length > 200) { roundTrips.shift(); }
    }).finally(() => drawn(drag));
  }

  function drawn(drag) {
    drag.busy = false;
    if (drag.waiting) { follow(drag); }
  }
}

function place(toSheet, event) {
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toSheet);
  return { x, y };
}
