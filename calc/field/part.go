package field

// Part is a part of the job sheet. Parts stand in the order of the job.
type Part string

const (
	Metal  Part = "metal"
	Design Part = "design"
	Bite   Part = "bite"
	Bath   Part = "bath"
	Page   Part = "page" // what the page itself holds: the units switch
)

// Parts in the order in which the job is done.
var Parts = []Part{Metal, Design, Bite, Bath, Page}
