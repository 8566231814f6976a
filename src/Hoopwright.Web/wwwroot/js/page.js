// Small things that only the page itself can do.
export function save(blob, fileName) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

export const saveText = (text, fileName, type) => save(new Blob([text], { type }), fileName);

export const saveBytes = (bytes, fileName, type) => save(new Blob([bytes], { type }), fileName);

export function remember(name, value) {
  try { localStorage.setItem('hoopwright.' + name, value); } catch { /* a browser that keeps nothing still works */ }
}

export function recall(name) {
  try { return localStorage.getItem('hoopwright.' + name); } catch { return null; }
}

export function theme(name) {
  if (name) document.documentElement.dataset.theme = name;
  else delete document.documentElement.dataset.theme;
}

export const language = code => { document.documentElement.lang = code; };

// A picture small enough to travel with a plan: at most 640 points across and 60,000 characters, without what a camera writes beside it.
export async function smallPicture(field) {
  const file = field.files?.[0];
  field.value = '';
  if (!file || file.size > 50_000_000) return null;
  try {
    const picture = await createImageBitmap(file), longest = Math.max(picture.width, picture.height);
    for (const [most, quality] of [[640, 0.7], [480, 0.6], [320, 0.5]]) {
      const scale = Math.min(1, most / longest), canvas = document.createElement('canvas');
      canvas.width = Math.max(1, Math.round(picture.width * scale));
      canvas.height = Math.max(1, Math.round(picture.height * scale));
      canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
      const address = canvas.toDataURL('image/jpeg', quality);
      if (address.length <= 60_000) return address;
    }
  } catch { /* no picture that this browser reads */ }
  return null;
}

export const print = () => window.print();

// Marks what a focused field changes: every group of the drawing whose layer is named.
export function highlight(host, layers) {
  if (!host) return;
  for (const group of host.querySelectorAll('[data-layer]')) group.classList.toggle('lit', layers.includes(group.dataset.layer));
}

// Shows a dialog over the whole screen until it is closed, by its button or the Escape key.
export function openDialog(dialog, page) {
  dialog.addEventListener('close', () => page.invokeMethodAsync('Closed'), { once: true });
  dialog.showModal();
}

export const closeDialog = dialog => dialog.close();

// Puts the keyboard, and the voice of a screen reader, on the heading of a stage that was just chosen.
export const focusHeading = () => document.querySelector('.questions h2')?.focus({ preventScroll: true });

// Brings what is chosen in each row that scrolls sideways into sight, without moving the page.
export function settleRows() {
  for (const chosen of document.querySelectorAll('.bays [aria-current="page"], .tabs [aria-pressed="true"]')) {
    const row = chosen.parentElement, [outer, inner] = [row.getBoundingClientRect(), chosen.getBoundingClientRect()];
    row.scrollLeft += inner.left - outer.left - (outer.width - inner.width) / 2;
  }
}

// On a narrow screen a drawing is too small to hit its parts: a touch shows it large first.
const narrow = matchMedia('(max-width: 61.99rem)');

export function watchTouch(host, page) {
  host.addEventListener('click', () => { if (narrow.matches) page.invokeMethodAsync('Touched'); });
}

// Tells the page which layer of a drawing was touched.
export function watchLayers(host, page) {
  host.addEventListener('click', event => {
    const group = event.target.closest?.('[data-layer]');
    if (group && !(narrow.matches && host.classList.contains('paper'))) page.invokeMethodAsync('LayerTouched', group.dataset.layer);
  });
}

// Puts the keyboard on the field of a path, and brings it into sight.
export function focusField(path) {
  const place = document.querySelector(`[data-path="${CSS.escape(path)}"]`);
  const field = place?.querySelector('input, select, textarea') ?? place?.querySelector('button, summary');
  if (!field) return false;
  for (let box = field.closest('details'); box; box = box.parentElement?.closest('details')) box.open = true;
  field.focus({ preventScroll: true });
  field.scrollIntoView({ block: 'center', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
  return true;
}

// Plan files that are dropped anywhere on the page, also those that were dropped before it was up.
export async function watchDrops(page, most) {
  let last = Promise.resolve();
  const drops = globalThis.hoopwrightDrops;
  drops.take = file => { last = last.then(async () => page.invokeMethodAsync('FileDropped', file.size > most ? null : await file.text())).catch(fault => console.error(fault)); };
  drops.waiting.splice(0).forEach(drops.take);
  await last;
}

export function watchNetwork(page) {
  const tell = () => page.invokeMethodAsync('NetworkChanged', navigator.onLine);
  addEventListener('online', tell);
  addEventListener('offline', tell);
  return navigator.onLine;
}
