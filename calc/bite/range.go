package bite

// The efficiency of the dissolution where no run of this bench tells it. Common
// practice, no source.
const LeastEfficiency, MostEfficiency = 0.90, 1.05

// Likely is the law at the slow and at the fast end of its range. The slow one
// is the slower of two, not their product:
//
//	efficiency = least      with the usual equivalent
//	equivalent = low        at the law's own efficiency
//
// and the fast one has efficiency = most. low (kg/C) is the equivalent with more
// charge for the same metal, as with tin leaving as Sn(IV); 0 if there is no such
// one. Common practice gives LeastEfficiency and MostEfficiency; a bench's own
// runs give theirs, and include what its tin does, so low is 0 with them. In
// common salt both efficiencies are the law's own: copper leaves as Cu(I), or as
// Cu(II), which is the low equivalent.
func (l Law) Likely(low, least, most float64) (slow, fast Law) {
	slow, fast = l, l
	slow.Efficiency, fast.Efficiency = least, most
	charged := l
	charged.Equivalent = low
	if v := charged.volumePerCharge(); v > 0 && v < slow.volumePerCharge() {
		slow = charged
	}
	return slow, fast
}
