package field

// Part is a part of the job sheet. Parts stand in the order of the job.
type Part string

const (
	Metal  Part = "metal"
	Design Part = "design"
	Bite   Part = "bite"
	Sheet  Part = "sheet" // the sheet and its lines
	Supply Part = "supply"
	Bath   Part = "bath"   // mixing it
	Keep   Part = "keep"   // the bath afterwards
	Course Part = "course" // is the piece on course
	Page   Part = "page"   // what the page itself holds: the units switch
)

// Parts in the order in which the job is done.
var Parts = []Part{Metal, Design, Bite, Sheet, Supply, Bath, Keep, Course, Page}
