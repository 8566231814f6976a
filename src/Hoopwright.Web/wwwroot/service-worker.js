// While developing nothing is kept: every file comes from the server.
self.addEventListener('fetch', () => { });
