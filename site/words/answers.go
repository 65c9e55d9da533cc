package words

// Answers are the labels of the figures, by the answer's name.
var Answers = map[string]string{
	"depth":       "Depth",
	"time":        "Time",
	"current":     "Current",
	"area":        "Open area, each",
	"totalArea":   "Bare metal in all",
	"density":     "Current density",
	"charge":      "Charge",
	"removed":     "Dissolves in all",
	"removedEach": "Each piece loses",
	"equivalent":  "Dissolves per A h",
	"rate":        "Rate of bite",

	"saltMass":          "Salt to weigh",
	"waterMass":         "Water to weigh",
	"solutionMass":      "Bath weighs",
	"volume":            "Bath in all",
	"saltFraction":      "Salt by mass",
	"anhydrousFraction": "Anhydrous by mass",
	"molarity":          "Molarity",
	"perLitre":          "Per litre of bath",
	"perLitreWater":     "Per litre of water",
	"solutionDensity":   "Bath's density",
	"conductivity":      "Conductivity",
	"saturation":        "Of saturation",
	"undissolved":       "Stays undissolved",
	"waterToDissolve":   "Water to dissolve",
	"metalInBath":       "Metal in the bath",
	"crystals":          "Crystals when cold",
	"saturatesAt":       "Crystallises below",
}
