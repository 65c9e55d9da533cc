package metal

import "testing"

// What the first answer waits for.
func BenchmarkIndex(b *testing.B) {
	for b.Loop() {
		newIndex()
	}
}

// What the first text waits for that is not a name as it stands.
func BenchmarkStrangers(b *testing.B) {
	x := newIndex()
	for b.Loop() {
		newStrangers(x.wholes)
		x.withGaps()
	}
}
