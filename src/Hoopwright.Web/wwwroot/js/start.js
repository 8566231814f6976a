// Registers what makes the page work without a network, and applies the reader's own choices before anything is drawn.
try {
  const theme = localStorage.getItem('hoopwright.theme');
  if (theme) document.documentElement.dataset.theme = theme;
  const language = localStorage.getItem('hoopwright.language');
  if (language) document.documentElement.lang = language;
} catch { /* a browser that keeps nothing still works */ }

if ('serviceWorker' in navigator) navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });
