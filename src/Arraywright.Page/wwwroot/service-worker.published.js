self.addEventListener('fetch', () => { });
