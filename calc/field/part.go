package field

// Part is a part of the job sheet. Parts stand in the order of the job.
type Part string

const (
	PartMetal   Part = "metal"
	PartDesign  Part = "design"
	PartBite    Part = "bite"
	PartSheet   Part = "sheet" // the sheet and its lines
	PartSupply  Part = "supply"
	PartBath    Part = "bath"    // mixing it
	PartKeep    Part = "keep"    // the bath afterwards
	PartCourse  Part = "course"  // is the piece on course
	PartTrouble Part = "trouble" // what went wrong
	PartArtwork Part = "artwork" // a picture: how it is read and printed, and what it gave
	PartLog     Part = "log"     // what a finished run showed
	PartClass   Part = "class"   // many pieces, one supply, one clock
	PartPage    Part = "page"    // what the page itself holds: the units switch
)

// Parts in the order in which the job is done.
var Parts = []Part{PartMetal, PartDesign, PartBite, PartSheet, PartSupply, PartBath, PartKeep, PartCourse, PartTrouble, PartArtwork, PartLog, PartClass, PartPage}
