package metal

import (
	"strings"
	"unicode/utf8"
)

// plated is what one metal with a coat of another is called.
const plated = "a plated metal"

// other is a material or thing that people ask about and that is not a copper or
// silver alloy: what an answer calls it, and its names in five languages.
type other struct{ what, names string }

// otherMetals are metals that need other baths.
var otherMetals = [...]other{
	{"stainless steel", "stainless steel,stainless,inox,edelstahl,acier inoxydable,acero inoxidable,acciaio inox,acciaio inossidabile,rostfrei"},
	{"galvanised steel", "galvanised steel,galvanized steel,galvanised,galvanized,verzinkt"},
	{"steel", "steel,mild steel,carbon steel,tool steel,spring steel,stahl,stahlblech,acier,acero,acciaio"},
	{"iron", "iron,cast iron,wrought iron,eisen,gusseisen,fer,fonte,hierro,ferro,ghisa"},
	{"tinplate, tinned steel", "tinplate,tin plate,weissblech,fer blanc,hojalata,latta"},
	{"zinc", "zinc,zink,zinkblech,titanzink,cinc,zinco"},
	{"aluminium", "aluminium,aluminum,alu,alublech,aluminiumblech,aluminio,alluminio,dural,duralumin,duraluminium"},
	{"nickel", "nickel,niquel,nichel,nichelio,nickelblech"},
	{"a nickel alloy", "constantan,nichrome"},
	{"white gold, a gold alloy", "white gold,weissgold,or blanc,oro blanco,oro bianco"},
	{"gold", "gold,golden,or jaune,or rose,or rouge,or fin,or massif,oro,goldblech,rose gold,yellow gold,rotgold,gelbgold"},
	{"electrum, a gold alloy", "electrum,elektrum"},
	{"platinum", "platinum,platin,platine,platino"},
	{"palladium", "palladium,paladio,palladio"},
	{"rhodium", "rhodium,rodio"},
	{"iridium", "iridium"},
	{"ruthenium", "ruthenium"},
	{"pewter, a tin alloy", "pewter,britannia metal,britanniametall,hartzinn,peltre,peltro,metal blanc,white metal,weissmetall,metal blanco,metallo bianco,babbitt,lead free pewter"},
	{"tin", "tin,zinn,zinnblech,etain,estano,stagno"},
	{"lead", "lead,blei,bleiblech,plomb,plomo,piombo"},
	{"solder", "solder,silver solder,hard solder,soft solder,lot,silberlot,hartlot,weichlot,soudure,brasure,soldadura,saldatura,lega saldante"},
	{"titanium", "titanium,titan,titane,titanio,titanblech"},
	{"niobium", "niobium,niob,niobio"},
	{"tantalum", "tantalum,tantal,tantale,tantalio"},
	{"tungsten", "tungsten,wolfram,wolframio"},
	{"chromium", "chrome,chromium,chrom,cromo"},
	{"cobalt", "cobalt,kobalt,cobalto"},
	{"molybdenum", "molybdenum,molybdan,molybdene"},
	{"vanadium", "vanadium"},
	{"zirconium", "zirconium,zirkonium"},
	{"cadmium", "cadmium"},
	{"bismuth", "bismuth,wismut"},
	{"antimony", "antimony,antimon"},
	{"mercury", "mercury,quicksilver,quecksilber,mercure,mercurio"},
	{"magnesium", "magnesium,magnesio"},
	{"manganese", "manganese,mangan,manganeso"},
	{"silicon", "silicon,silizium,silicium,silicio"},
	{"germanium", "germanium,germanio"},
	{"beryllium", "beryllium,berilio,berillio"},
	{"phosphorus", "phosphorus,phosphor,phosphore,fosforo"},
	{"arsenic", "arsenic,arsen,arsenico"},
	{"sodium", "sodium,natrium"},
	{"lithium", "lithium"},
	{"uranium", "uranium,uran"},
	{"damascus steel", "damascus,damascus steel,damast,damaststahl"},
	{"mokume, layers of different metals", "mokume,mokume gane"},
}

// otherThings are coated or layered metals, and things that are not metals.
var otherThings = [...]other{
	{"silver plate, a thin coat of silver over another metal", "silver plate,sterling plate,silver plated,silver plating,silverplate,silver filled,versilbert,argent plated,plata chapada,argento placcato,silver coated"},
	{"gold plate, a thin coat of gold over another metal", "gold plate,gold plated,gold filled,rolled gold,vermeil,vergoldet,dore,dorado,chapado oro,placcato oro"},
	{plated, "plated,plating,coated,clad,plaque or,nickel plated,chrome plated,copper plated,brass plated,vernickelt,verchromt,verkupfert,chapado,placcato"},
	{"a salt, not a metal", "copper sulfate,copper sulphate,silver nitrate,copper nitrate,kupfersulfat,silbernitrat,sulfate de cuivre,nitrate d argent,sulfato de cobre,nitrato de plata,solfato di rame,nitrato di argento,copper chloride,silver chloride,verdigris"},
	{"paint", "paint,gold paint,silver paint,bronze paint,copper paint,goldbronze,silberbronze,farbe,peinture,pintura,vernice,lack,lacquer,varnish"},
	{"leaf, too thin to etch", "gold leaf,silver leaf,copper leaf,blattgold,blattsilber,feuille or,schlagmetall"},
	{"a plastic", "plastic,acrylic,plexiglass,polycarbonate,nylon,pvc,abs,polystyrene,vinyl,kunststoff,plastique,plastico,plastica,epoxy,resin,resine,resina,harz,silicone,silikon"},
	{"rubber", "rubber,gummi,caoutchouc,goma,gomma"},
	{"glass", "glass,glas,verre,vidrio,vetro"},
	{"wood", "wood,holz,bois,madera,legno,plywood,mdf,oak,maple,birch"},
	{"linoleum", "linoleum,lino"},
	{"stone", "stone,stein,pierre,piedra,pietra,marble,granite,slate,agate,schiefer,marmor"},
	{"leather", "leather,leder,cuir,cuero,cuoio"},
	{"paper", "paper,papier,papel,carta,cardboard"},
	{"cloth", "cotton,wool,silk,linen,felt,baumwolle,coton,algodon,cotone"},
	{"ceramic", "ceramic,ceramics,porcelain,keramik,porzellan,ceramique"},
}

// othersByName maps each name of another metal or thing, folded, to what it is,
// and says how many words the longest has.
func othersByName() (what map[string]string, longest int) {
	what = map[string]string{}
	for _, list := range [...][]other{otherMetals[:], otherThings[:]} {
		for _, o := range list {
			for _, name := range strings.Split(o.names, ",") {
				list := words(fold(name))
				what[strings.Join(list, " ")] = o.what
				longest = max(longest, len(list))
			}
		}
	}
	return what, longest
}

// isThing says that what an answer calls something is one of otherThings.
func isThing(what string) bool {
	for _, o := range otherThings {
		if o.what == what {
			return true
		}
	}
	return false
}

// guessable is how many letters the name of another material must have to be
// recognised when misspelt. Too many shorter words are a letter apart ("plátano",
// "platino").
const guessable = 8

// other is the material that a text names and that is not in the catalogue, "" if
// it names none: the longest name in it, right or with one slip. Of two names at
// the same distance, the first in the alphabet is taken.
func (x *strangers) other(list []string) string {
	if what := x.otherIn(list); what != "" {
		return what
	}
	for _, w := range list {
		n := utf8.RuneCountInString(w)
		if n < guessable-1 || x.known[w] || x.fixed[w] {
			continue
		}
		which, guess := lettersOf(w), ""
		for _, g := range x.guesses {
			if (guess == "" || g.word < guess) && which.apart(g.which) <= 1 && slips(w, g.word, n, g.n, 1) <= 1 {
				guess = g.word
			}
		}
		if guess != "" {
			return x.others[guess]
		}
	}
	return ""
}

// otherIn is other for words without a slip. A single word beside another metal's
// says nothing: "steel brass" may be either.
func (x *strangers) otherIn(list []string) string {
	for n := min(x.longestOther, len(list)); n > 0; n-- {
		for at := 0; at+n <= len(list); at++ {
			what := x.others[strings.Join(list[at:at+n], " ")]
			if what != "" && (n > 1 || what == plated || !x.metalBeside(list, at)) {
				return what
			}
		}
	}
	return ""
}

// metalBeside says that a list holds the name of another metal than the word at
// one place.
func (x *strangers) metalBeside(list []string, there int) bool {
	for i, w := range list {
		_, element := elementNamed(w)
		if i != there && w != list[there] && (element || familyOfWord(w) != "" || len(x.others[w]) > 0) {
			return true
		}
	}
	return false
}
