package metal

import "strings"

// set is the set of the words of a list.
func set(list string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(list) {
		m[w] = true
	}
	return m
}

// joints are small words between the words of a name or beside its numbers. They
// mean nothing here.
var joints = set(`the a an for percent pct prozent millesimi milliemes milesimas tausendstel
	de du des d la le les l el los en pour para por aux au al a
	di da del della dello dei per il lo all alla allo dal
	aus fur von der die das mit zum`)

// shapes are words for the form that a metal comes in or for its use. They don't
// say which metal it is.
var shapes = set(`sheet sheets plate plates wire wires foil strip strips bar bars rod rods tube tubing pipe pipes disc discs disk
	disks blank blanks stock coil ribbon flat round square piece pieces scrap offcut offcuts alloy metal cuff bangle
	half hard soft dead annealed shim old used leftover rolled cold bright polished thin thick fired sintered solid
	etching etch etched etchable engraving jewelry jewellery jeweler jewelers jeweller jewellers craft intaglio printmaking
	enamel enameling enamelling enamelers enamellers drypoint aquatint bezel case bare quality in
	of grade type uns en din bs cda astm sae iso ga gauge gage swg awg mm cm inch inches
	blech bleche platte platten draht folie stab stange rohr tafel scheibe zum atzen geatzt weich
	druckplatte radierung kaltnadel halbhart hart gegluht weichgegluht gewalzt gebrannt legierung metall
	tole plaque plaques feuille fil bande barre tube disque planche recuit ecroui demi dur graver gravure eau forte
	taille douce alliage cuit
	chapa chapas hoja hojas grabado aguafuerte lamina laminas plancha planchas hilo alambre varilla barra tubo disco recocido duro grabar
	aleacion cocido
	lastra lastre lamiera lamierino foglio filo barra tubo disco ricotto crudo incisione incidere
	acquaforte calcografia lega cotto`)

// vague are words that say that the person doesn't know which metal it is.
var vague = set(`unknown unidentified unspecified unmarked mystery assorted some any kind sort
	unbekannt unbekanntes unbekannte irgendein inconnu inconnue desconocido desconocida sconosciuto sconosciuta`)

// sizes are units after a number that says how thick a sheet is.
var sizes = set(`ga g gauge gage swg awg mm cm in inch inches um mil mils thou micron microns`)

// tails are German words for a form, as they are joined to a metal's name.
var tails = []string{"blech", "bleche", "platte", "platten", "draht", "folie", "band", "stab", "rohr", "tafel", "scheibe", "ronde", "legierung"}

// lookAlikes are words that are a letter or two away from a word of a name and
// mean something else: they are never taken for a slip. Found by trying all words
// of Debian's word lists (wamerican, wngerman, wfrench, wspanish, witalian).
// "cooper", "sliver" and "bras" are left out, since here they are mostly slips.
var lookAlikes = set(`
	aliaca almento armento arment arpent arpentons arrentons ardent urgent agent alpacas alpaga
	argenta argentage argentai argentant argentar argentas argentat argente argentent argenteo argenteur
	argentin argentina argentine argentines argentino argentins argentions argentite argentons argentosa
	argentoso argents argenture argert arguent argument sargento sargentona
	bass baston blass boas brads brags braes brais brans brasa brasas brase brases brash brasse brassa brassard
	brasses brasso brassy brats brays bias crass grass
	bonze bronca bronche bronches bronci bronco broncos bronte bronza bronzed bronzer bronzers bronzez bronzing
	brownie rozno brozno breeze
	capper chopper cope copes copier copiers copped copperas coppery copter copters couper cover cowper cropper cupper
	proper cuivra cuivrer cuivrez cuivrees goldbronze zincbronze zinkbronze
	gelding girding gliding golding guiding
	koffer kufer kuffer kuper kupfern iaton lawton layton bottone cotone cottone ottoman ottomane
	blessing dressing kissing massing meshing messina messine messung missing mussing passing
	platalea versilber
	saver selben selber silben selver salve salver silbar silbern silbernen silva silves silvered silverer silvern
	silvers silvery silvia siller slaver solver gilberto
	similaire similar simile sperling starling starlings stealing steeling sterile sterlina sterline string
	combat tobacco tombai tombal tombas tombat tomcat wombat laston liaton ragent packfung`)

// everyday are words that are one slip away from a short word of a name and mean
// something else: "bill metal" is not bell metal. Found in Debian's word lists: all
// English words one slip from a word of four or five letters in an English name,
// and words of any of the five languages that differ from a word of a name by two
// swapped letters or by a doubled one. "gnu" is left out: here it is a slip.
const everyday = " " +
	"aloha alphas apte back ball beat belle bells belly belt bet betas bets bill blacks blank block boll bull cant " +
	"cart case cash cask caste casts cat cats chin chock clack clad clam clan clap claw click cloak clocks cloy " +
	"cluck coast cock coif coil coins combo compos con coon corbe corn cost cray crock cyst deed deem deeps deer " +
	"ditch extras fame fared fee fie fife file filed fin find fined finer fines fink fins fire fires firmed firs " +
	"firsts fist five fixed flame flee foe framed framer frames freed freer frees fret fried gang gears geld gild " +
	"goad god going golds golf gone gongs gonk good highs hoot hostel hotels hovel lad lea leads leaf leak lean " +
	"leap leas led lend lewd liber load lye meal medal mental meta metals nary nasal natal nave navel nay noon once " +
	"ounces pain palta pare patch patte peony pinch pith plaid plains plaint plait plan pore puke puree purer purge " +
	"purl purr purse pyre rang rat reed rice rick rig rind rings rink rise robe rode roe roes rogue role rope roses " +
	"rosy rote roue rouse rove ruing rung ruse samba screws screwy shake shaky shrew slid sold soled soli solids " +
	"stolid strew though touch toughs trough "
