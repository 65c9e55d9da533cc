package pagetest

// noJobs begins with no job on the shelf.
func (p *page) noJobs() {
	p.Helper()
	p.loadOnly("/scripts") // which holds no database open
	if err := p.ExecuteAsync(nil, `const done = arguments[0], gone = indexedDB.deleteDatabase('saltbite')
		gone.onsuccess = gone.onerror = gone.onblocked = () => done(true)`); err != nil {
		p.Fatal(err)
	}
	p.load("/")
}
