/** Gives the keyboard to an element, such as the button from which a panel was opened. */
export function give(id) { document.getElementById(id)?.focus(); }
