/** Gives the keyboard to an element, such as the button from which a panel was opened. */
export function give(id) { document.getElementById(id)?.focus(); }

/** Goes to a heading far down the page: the keyboard too, and what stands below it is seen. */
export function lead(id) {
  const heading = document.getElementById(id);
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: 'start' });
}
