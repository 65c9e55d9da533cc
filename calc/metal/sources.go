package metal

// Source says where a row of the catalogue was read and how sure that is.
type Source struct {
	Text       string
	Confidence string // field by field: "seen", "derived" or "calculated" from what was seen, "memory"
	Notes      string // what the sources disagree about, "" if nothing
}

// SourceOf is the source of the catalogue's metal with that id; false if there is
// no such metal. The sources are a list of their own because the program that
// answers never calls this: the linker then leaves them out.
func SourceOf(id string) (Source, bool) {
	for _, row := range sources {
		if row.id == id {
			return row.Source, true
		}
	}
	return Source{}, false
}
