// Pointer and keys on the sheet. Places are sent in the drawing's own units, millimetres of the bench.
// Only one move is on its way at a time: what the pointer does meanwhile is folded into the next one, so that the
// drawing never lags behind a queue.

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
  // Kept once the drag before has been drawn and put down. A hand may be quicker: its next move waits for that, or the
  // end of one drag would let go of the thing that the next one holds.
  let putDown = Promise.resolve();

  root.addEventListener('pointerdown', event => {
    const grip = event.target.closest('[data-grip]');
    if (!grip || event.button !== 0 || held) { return; }
    // The scale of the first touch holds for the whole drag: a line of text that grows elsewhere must not move the hand.
    const toSheet = grip.ownerSVGElement.getScreenCTM().inverse();
    held = { toSheet, pointer: event.pointerId, waiting: null, busy: true, over: false };
    grip.setPointerCapture(event.pointerId);
    grip.focus({ preventScroll: true });
    event.preventDefault();
    const { end, view } = grip.closest('[data-end]').dataset;
    const at = place(toSheet, event);
    const mine = held;
    const before = putDown;
    putDown = new Promise(keep => { mine.putDown = keep; });
    before.then(() => hands.invokeMethodAsync('Grasp', end, grip.dataset.grip, view, at.x, at.y))
      .finally(() => { mine.busy = false; send(mine); });
  }, { signal: gone.signal });

  root.addEventListener('pointermove', event => {
    if (!held || event.pointerId !== held.pointer) { return; }
    held.waiting = { ...place(held.toSheet, event), free: event.altKey, since: performance.now() };
    send(held);
  }, { signal: gone.signal });

  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
    root.addEventListener(end, event => {
      if (!held || event.pointerId !== held.pointer) { return; }
      const mine = held;
      held = null;
      mine.over = true;
      send(mine);
    }, { signal: gone.signal });
  }

  root.addEventListener('keydown', event => {
    const grip = event.target.closest('[data-grip]');
    if (!grip || !keys.has(event.key) || event.ctrlKey || event.altKey || event.metaKey) { return; }
    event.preventDefault();
    const { end, view } = grip.closest('[data-end]').dataset;
    putDown.then(() => hands.invokeMethodAsync('Press', end, grip.dataset.grip, view, event.key, event.shiftKey));
  }, { signal: gone.signal });

  // Undo and redo from anywhere, except from a field in which something is typed that was not taken yet: there the browser's own holds.
  root.addEventListener('input', event => { typing = event.target; }, { signal: gone.signal });
  root.addEventListener('change', () => { typing = null; }, { signal: gone.signal });
  document.addEventListener('keydown', event => {
    const redo = event.shiftKey || event.key.toLowerCase() === 'y';
    if (!(event.ctrlKey || event.metaKey) || event.altKey || !/^[zy]$/i.test(event.key) || typing === document.activeElement) { return; }
    event.preventDefault();
    if (!held) { putDown.then(() => hands.invokeMethodAsync('Travel', redo)); }
  }, { signal: gone.signal });

  function send(drag) {
    if (drag.busy) { return; }
    if (!drag.waiting) {
      // The last move has been drawn: now the drag becomes one step.
      if (drag.over) {
        drag.over = false;
        hands.invokeMethodAsync('Release').finally(drag.putDown);
      }
      return;
    }
    const { x, y, free, since } = drag.waiting;
    drag.waiting = null;
    drag.busy = true;
    hands.invokeMethodAsync('Follow', x, y, free).then(() => {
      roundTrips.push(performance.now() - since);
      if (roundTrips.length > 200) { roundTrips.shift(); }
    }).finally(() => { drag.busy = false; send(drag); });
  }
}

function place(toSheet, event) {
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toSheet);
  return { x, y };
}
