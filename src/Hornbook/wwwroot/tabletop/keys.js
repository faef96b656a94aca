// Keys of a whole page: what each one means is told to the page; where something is typed or pressed with the same key, it keeps it.
// They hold as long as the element that they were given for is there.

let detach = () => { };

export function attach(rootId, meanings, page) {
  detach();
  const gone = new AbortController();
  detach = () => gone.abort();
  const root = document.getElementById(rootId);
  document.addEventListener('keydown', event => {
    if (!root.isConnected) { gone.abort(); return; }
    const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
    const meaning = meanings[key];
    if (!meaning || event.ctrlKey || event.altKey || event.metaKey || event.repeat) { return; }
    if (event.target.closest('input:not([type=checkbox]), select, textarea')) { return; }
    if (key === ' ' && event.target.closest('button, a, summary, input')) { return; }
    event.preventDefault();
    page.invokeMethodAsync('Press', meaning);
  }, { signal: gone.signal });
}
