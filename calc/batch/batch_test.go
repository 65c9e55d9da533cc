package batch

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"saltbite/calc/bite"
)

const (
	mm, cm2, minute = 1e-3, 1e-4, 60.0
	faraday         = 6.02214076e23 * 1.602176634e-19 // C/mol, N_A e, both exact in the SI of 2019
)

// copper by abridged atomic weight and handbook density, both from memory.
var copper = bite.Law{Equivalent: 63.546e-3 / 2 / faraday, Density: 8960, Efficiency: 1}

// square is equal pieces of copper of that open area (cm2), etched to a depth
// (mm) at 30 mA/cm2.
func square(area, depth float64, count int) Row {
	return Row{Bath: "sulfate", Density: 300, Depth: depth * mm, Law: copper, Work: bite.Work{Area: area * cm2}, Count: count}
}

func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance*math.Abs(want)
}

// taking is one piece of copper that takes that current (A) and time (s), at 100 A/m2.
func taking(current, time float64) Row {
	return Row{Bath: "sulfate", Density: 100, Depth: copper.DepthAt(100, time).SI, Law: copper, Work: bite.Work{Area: current / 100}, Count: 1}
}

// Four rows on one supply of 2 A. By hand: at 300 A/m2 pieces of 30, 20, 10 and
// 40 cm2 take 0.9, 0.6, 0.3 and 1.2 A, together 3.0 A (the third twice: 3.3 A),
// so two loads. 0.1 mm takes 8960 kg/m3 x 1e-4 m / 3.29304e-7 kg/C / 300 A/m2 =
// 9069.65 s. The pieces of 0.2 mm (30 and 10 cm2) take twice that. With 1.2 A
// of short ones and 0.6 A of short ones in one load (1.8 A) and all of 0.2 mm in
// the other (0.9 + 2 x 0.3 = 1.5 A) the loads take 9069.65 and 18139.3 s; with
// ten minutes between them 27808.95 s.
func TestClassByHand(t *testing.T) {
	rows := []Row{square(30, 0.2, 1), square(20, 0.1, 1), square(10, 0.2, 2), square(40, 0.1, 1)}
	plan, ok := Arrange(rows, Supplies{Count: 1, Amps: 2, Changeover: 10 * minute})
	if !ok || len(plan.Loads) != 2 || plan.Rounds != 2 || plan.LeastLoads != 2 {
		t.Fatalf("%+v", plan)
	}
	if !near(plan.End, 27808.95, 1e-5) || !near(plan.Current, 1.8, 1e-12) {
		t.Errorf("ends after %g s, at most %g A", plan.End, plan.Current)
	}
	first, second := plan.Loads[0], plan.Loads[1]
	if !near(first.Current, 1.5, 1e-12) || !near(second.Current, 1.8, 1e-12) || !near(second.Start, 18139.3+600, 1e-5) {
		t.Errorf("%+v\n%+v", first, second)
	}
	// All of them end together in each load, in the order of their rows.
	if got := fmt.Sprint(names(first)); got != "[0x1 2x2]" {
		t.Errorf("first load %s", got)
	}
	if got := fmt.Sprint(names(second)); got != "[1x1 3x1]" {
		t.Errorf("second load %s", got)
	}
}

func names(l Load) (all []string) {
	for _, lift := range l.Lifts {
		all = append(all, fmt.Sprintf("%dx%d", lift.Row, lift.Count))
	}
	return all
}

// One load, three depths. By hand: 10 cm2 each at 300 A/m2 take 0.3 A; 0.1, 0.2
// and 0.3 mm take 9069.65, 18139.3 and 27208.9 s; as each is lifted the current
// is turned down by 0.3 A, twice that for the pair.
func TestLifts(t *testing.T) {
	plan, ok := Arrange([]Row{square(10, 0.3, 1), square(10, 0.1, 2), square(10, 0.2, 1)}, Supplies{Count: 1, Amps: 1.2})
	if !ok || len(plan.Loads) != 1 || !near(plan.Loads[0].Current, 1.2, 1e-12) {
		t.Fatalf("%+v", plan)
	}
	for i, want := range []Lift{{1, 2, 9069.65, 0.6, 0.6}, {2, 1, 18139.3, 0.3, 0.3}, {0, 1, 27208.9, 0.3, 0}} {
		got := plan.Loads[0].Lifts[i]
		if got.Row != want.Row || got.Count != want.Count || !near(got.At, want.At, 1e-5) || !near(got.Current, want.Current, 1e-12) || math.Abs(got.Left-want.Left) > 1e-12 {
			t.Errorf("%d: %+v, want %+v", i, got, want)
		}
	}
}

// By hand: 100 cm2 at 300 A/m2 want 3 A; with 2 A the piece takes 1.5 times as
// long as 9069.65 s, at 200 A/m2, alone.
func TestPieceTooLarge(t *testing.T) {
	plan, ok := Arrange([]Row{square(100, 0.1, 1), square(1, 0.1, 1)}, Supplies{Count: 1, Amps: 2})
	if !ok || len(plan.Loads) != 2 {
		t.Fatalf("%+v", plan)
	}
	if l := plan.Loads[0]; !near(l.Duration, 1.5*9069.65, 1e-5) || l.Current != 2 || !near(l.Density, 200, 1e-12) || len(l.Lifts) != 1 {
		t.Errorf("%+v", l)
	}
}

// By hand: the two loads of TestClassByHand take 18139.3 s for 0.2 mm and 9069.65
// s for 0.1 mm; with the same depth d for all both take d/0.1 mm x 9069.65 s. In
// 3 h less ten minutes that is (10800 - 600)/2/9069.65 x 0.1 mm = 0.0562315 mm.
func TestDeepestWithin(t *testing.T) {
	rows := []Row{square(30, 0.2, 1), square(20, 0.1, 1), square(10, 0.2, 2), square(40, 0.1, 1)}
	plan, _ := Arrange(rows, Supplies{Count: 1, Amps: 2, Changeover: 10 * minute})
	if got := plan.DeepestWithin(3 * 60 * minute); !near(got, 0.0562315*mm, 1e-5) {
		t.Errorf("%g mm", got/mm)
	}
	if got := plan.DeepestWithin(10 * minute); got != 0 {
		t.Errorf("%g mm while the pieces are changed over", got/mm)
	}
	for _, session := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if got := plan.DeepestWithin(session); got != 0 {
			t.Errorf("%g mm in %g s", got/mm, session)
		}
	}
	if got := (Plan{}).DeepestWithin(3600); got != 0 {
		t.Errorf("no class, %g", got)
	}
}

// shares are currents, as shares of what the supply gives, of several kinds.
var shares = map[string]func(r *rand.Rand) float64{
	"small":           func(r *rand.Rand) float64 { return 0.01 + 0.1*r.Float64() },
	"mixed":           func(r *rand.Rand) float64 { return 0.02 + 0.58*r.Float64() },
	"any":             func(r *rand.Rand) float64 { return 1 - r.Float64() },
	"round":           func(r *rand.Rand) float64 { return float64(20+r.IntN(81)) / 150 },
	"two or three":    func(r *rand.Rand) float64 { return 0.25 + 0.25*r.Float64() },
	"two to five":     func(r *rand.Rand) float64 { return 0.2 + 0.3*r.Float64() },
	"three just full": triple(),
}

// triple gives the parts of loads that three pieces fill.
func triple() func(r *rand.Rand) float64 {
	var next []float64
	return func(r *rand.Rand) float64 {
		if len(next) == 0 {
			a := 380 + r.IntN(111)
			b := 250 + r.IntN((1000-a)/2-249)
			next = []float64{float64(a) / 1000, float64(b) / 1000, float64(1000-a-b) / 1000}
		}
		share := next[0]
		next = next[1:]
		return share
	}
}

// drawn is pieces of such shares of 1 A, each with its own time.
func drawn(r *rand.Rand, share func(*rand.Rand) float64, pieces int) (rows []Row) {
	for range pieces {
		rows = append(rows, taking(share(r), 3600*(0.5+3*r.Float64())))
	}
	return rows
}

// The search comes to its end with up to 24 pieces of every kind: no plan has
// fewer loads.
func TestFewestLoads(t *testing.T) {
	for name, share := range shares {
		r := rand.New(rand.NewPCG(81, 82))
		for range 150 {
			rows := drawn(r, share, 6*(1+r.IntN(4)))
			s := Supplies{Count: 1, Amps: 1}
			plan, ok := Arrange(rows, s)
			if !ok || len(plan.Loads) != plan.LeastLoads {
				t.Fatalf("%s: %d loads of %d pieces, at least %d", name, len(plan.Loads), len(rows), plan.LeastLoads)
			}
			if wrong := sound(plan, rows, s); wrong != "" {
				t.Fatalf("%s: %s", name, wrong)
			}
		}
	}
}

// Loads of three that are just full have a known count: pieces / 3.
func TestJustFull(t *testing.T) {
	r := rand.New(rand.NewPCG(83, 84))
	for range 60 {
		plan, ok := Arrange(drawn(r, triple(), 24), Supplies{Count: 1, Amps: 1})
		if !ok || len(plan.Loads) != 8 {
			t.Fatalf("%d loads", len(plan.Loads))
		}
	}
}

// Hundreds of pieces come within a twentieth of the bound. Where few pieces make
// a load that is never full ("two or three", "two to five") that needs the bound
// by count: L2 is too low there.
func TestHundreds(t *testing.T) {
	const within = 1.05
	for name, share := range shares {
		worst := 0.0
		for _, pieces := range []int{120, 300, 600} {
			r := rand.New(rand.NewPCG(uint64(pieces), 85))
			for range 5 {
				rows, s := drawn(r, share, pieces), Supplies{Count: 1 + r.IntN(3), Amps: 1}
				plan, ok := Arrange(rows, s)
				if !ok {
					t.Fatal("no plan")
				}
				if wrong := sound(plan, rows, s); wrong != "" {
					t.Fatalf("%s: %s", name, wrong)
				}
				over := float64(len(plan.Loads)) / float64(plan.LeastLoads)
				worst = math.Max(worst, over)
				if over > within+1e-9 {
					t.Errorf("%s, %d pieces: %d loads, at least %d", name, pieces, len(plan.Loads), plan.LeastLoads)
				}
			}
		}
		t.Logf("%s: at most %.3f of the bound", name, worst)
	}
}

// By hand: of six pieces of 0.45 A and three of 0.30 A on 1 A, three weak ones are
// 0.90 A, so that one load may hold three; a second with three would need 0.30 x 3 +
// 0.45 x 3 = 2.25 A of two. The other six take three loads of two: four, where the
// currents alone (3.6 A) and L2 (which has no piece over half) say the same. With
// six of 0.34 A instead none holds three: three loads of two are needed, and L2 says
// 2.04, three; of nine five, where the currents say 3.06, four.
func TestLeastByCount(t *testing.T) {
	of := func(shares ...float64) (pieces []piece) {
		for _, share := range shares {
			pieces = append(pieces, piece{current: share})
		}
		return pieces
	}
	nine := slices.Repeat([]float64{0.34}, 9)
	for _, x := range []struct {
		shares   []float64
		l2, want int
	}{
		{[]float64{0.45, 0.45, 0.45, 0.45, 0.45, 0.45, 0.3, 0.3, 0.3}, 4, 4},
		{nine, 4, 5},
		{slices.Concat(nine, []float64{0.01}), 4, 5}, // of those over a current alone
		{[]float64{0.7, 0.3, 0.3, 0.3, 0.3}, 2, 2},   // 1.9 A: what is over half leaves room for one of the others
		{[]float64{0.5, 0.5}, 1, 1},
		{nil, 0, 0},
		{[]float64{1, 1}, 2, 2},
	} {
		pieces := of(x.shares...)
		if l2, got := leastLoads(pieces, 1), leastByCount(pieces, 1); l2 != x.l2 || got != x.want {
			t.Errorf("%v: L2 says %d, by count %d; want %d, %d", x.shares, l2, got, x.l2, x.want)
		}
	}
}

func BenchmarkArrange(b *testing.B) {
	for _, kind := range []string{"mixed", "two or three", "two to five"} {
		for _, pieces := range []int{24, 100, 300, 600, MostPieces} {
			r := rand.New(rand.NewPCG(uint64(pieces), 86))
			rows := drawn(r, shares[kind], pieces)
			b.Run(fmt.Sprint(kind, " ", pieces), func(b *testing.B) {
				for b.Loop() {
					Arrange(rows, Supplies{Count: 2, Amps: 1})
				}
			})
		}
	}
}

func TestNothingToPlan(t *testing.T) {
	good, supplies := square(10, 0.1, 1), Supplies{Count: 1, Amps: 2}
	for name, spoil := range map[string]func(*Row, *Supplies){
		"amperes":       func(r *Row, s *Supplies) { s.Amps = 0 },
		"a supply":      func(r *Row, s *Supplies) { s.Count = 0 },
		"a changeover":  func(r *Row, s *Supplies) { s.Changeover = math.NaN() },
		"waiting":       func(r *Row, s *Supplies) { s.Changeover = -1 },
		"an end":        func(r *Row, s *Supplies) { s.Changeover = math.Inf(1) },
		"pieces":        func(r *Row, s *Supplies) { r.Count = 0 },
		"so few pieces": func(r *Row, s *Supplies) { r.Count = MostPieces + 1 },
		"a depth":       func(r *Row, s *Supplies) { r.Depth = 0 },
		"an area":       func(r *Row, s *Supplies) { r.Work.Area = math.NaN() },
		"a density":     func(r *Row, s *Supplies) { r.Density = -1 },
		"a metal":       func(r *Row, s *Supplies) { r.Law = bite.Law{} },
	} {
		row, s := good, supplies
		spoil(&row, &s)
		if plan, ok := Arrange([]Row{good, row}, s); ok {
			t.Errorf("without %s: %+v", name, plan)
		}
	}
	if _, ok := Arrange(nil, supplies); ok {
		t.Error("a class of no rows")
	}
}

// class draws rows, and supplies for which they are worth planning.
func class(r *rand.Rand, rows, copies int) ([]Row, Supplies) {
	amps := math.Ceil(100*math.Exp(r.Float64()*4-1)) / 100 // the same in every build, which an exponential need not be
	baths := []string{"sulfate", "nitrate", "salt"}[:1+r.IntN(3)*r.IntN(2)]
	coarse := r.IntN(2) == 0 // round figures: many loads that are just full
	var all []Row
	for range rows {
		share := 0.02 + 0.6*r.Float64()*r.Float64()
		if r.IntN(20) == 0 {
			share = 0.5 + r.Float64()
		}
		depth := (0.05 + 0.3*r.Float64()) * mm
		if coarse {
			share, depth = math.Ceil(share*12)/12, math.Ceil(depth/(0.05*mm))*0.05*mm
		}
		density := 200.0
		bare := share * amps / density
		row := Row{Bath: baths[r.IntN(len(baths))], Density: density, Depth: depth, Law: copper, Count: 1 + r.IntN(copies),
			Work: bite.Work{Area: bare * 0.9, Extra: bare * 0.1, Edge: r.Float64() * float64(r.IntN(2)), Undercut: 0.5}}
		if row.Bath == "nitrate" {
			row.Density /= 2
			row.Work.Area *= 2
			row.Work.Extra *= 2
		}
		all = append(all, row)
	}
	return all, Supplies{Count: 1 + r.IntN(3)*r.IntN(2), Amps: amps, Changeover: float64(r.IntN(3)) * 10 * minute}
}

// sound says what is wrong with a plan; "" if nothing is.
func sound(plan Plan, rows []Row, s Supplies) string {
	hung := make([]int, len(rows))
	busy := make([]float64, s.Count)
	round := make([]int, s.Count)
	var current float64
	for i, load := range plan.Loads {
		if i > 0 && load.Start < plan.Loads[i-1].Start {
			return "loads are not in the order of their start"
		}
		if load.Supply < 1 || load.Supply > s.Count {
			return "no such supply"
		}
		at := load.Supply - 1
		if round[at] > 0 {
			busy[at] += s.Changeover
		}
		round[at]++
		if load.Round != round[at] || !(math.Abs(load.Start-busy[at]) <= 1e-9*load.Start) {
			return "a load starts before the changeover is over, or late, or in another round"
		}
		if load.Current > s.Amps*(1+1e-9+1e-14) {
			return fmt.Sprintf("a load takes %g of %g A", load.Current, s.Amps)
		}
		var pieces int
		var together float64
		for j, lift := range load.Lifts {
			row := rows[lift.Row]
			hung[lift.Row] += lift.Count
			pieces += lift.Count
			together += lift.Current
			bare := (row.Work.Area + row.Work.Extra) * float64(lift.Count)
			if row.Bath != load.Bath || lift.Current/bare > row.Density*(1+1e-12) || !near(lift.Current/bare, load.Density, 1e-9) {
				return "another bath or density"
			}
			one := row.Work
			one.Pieces = float64(lift.Count)
			if depth := row.Law.Depth(one, lift.Current, lift.At-load.Start).SI; !near(depth, row.Depth, 1e-9) {
				return fmt.Sprintf("lifted at %g mm, wanted %g", depth/mm, row.Depth/mm)
			}
			if j > 0 && lift.At < load.Lifts[j-1].At {
				return "lifts are not in order"
			}
			if last := j == len(load.Lifts)-1; last != (lift.Left == 0) || lift.Left < 0 {
				return "the current is off too soon or never"
			}
			if math.Abs(load.Current-together-lift.Left) > 1e-9*s.Amps {
				return "the current is not turned down by the share of what is lifted"
			}
		}
		if load.Density < rows[load.Lifts[0].Row].Density*(1-1e-9) && (pieces != 1 || load.Current != s.Amps) {
			return "a piece that is too large does not hang alone at all that the supply gives"
		}
		if last := load.Lifts[len(load.Lifts)-1].At; !near(load.Start+load.Duration, last, 1e-12) {
			return "the load does not end with its last piece"
		}
		busy[at] = load.Start + load.Duration
		current = math.Max(current, load.Current)
	}
	for i, row := range rows {
		if hung[i] != row.Count {
			return fmt.Sprintf("row %d: %d pieces hang, of %d", i, hung[i], row.Count)
		}
	}
	if plan.Current != current || plan.Rounds != slices.Max(round) || plan.Rounds != (len(plan.Loads)+s.Count-1)/s.Count || !near(plan.End, slices.Max(busy), 1e-9) || plan.LeastLoads > len(plan.Loads) {
		return "the plan's own figures are not those of its loads"
	}
	return ""
}

func TestRandomClasses(t *testing.T) {
	r := rand.New(rand.NewPCG(61, 62))
	proven, small := 0, 0
	var slowest time.Duration
	for range 10000 {
		rows, s := class(r, 1+r.IntN(12), 1+r.IntN(4)*r.IntN(2))
		began := time.Now()
		plan, ok := Arrange(rows, s)
		slowest = max(slowest, time.Since(began))
		if !ok {
			t.Fatalf("no plan: %+v %+v", rows, s)
		}
		if wrong := sound(plan, rows, s); wrong != "" {
			t.Fatalf("%s: %+v\n%+v %+v", wrong, plan, rows, s)
		}
		session := plan.End * (0.3 + r.Float64())
		deepest := plan.DeepestWithin(session)
		for i := range rows {
			rows[i].Depth = deepest
		}
		if deepest > 0 {
			if end := planned(plan, rows, s); !near(end, session, 1e-9) {
				t.Fatalf("with the deepest that fits the class ends after %g s of %g", end, session)
			}
		}
		if count(rows) <= mostSearched {
			small++
			if len(plan.Loads) == plan.LeastLoads {
				proven++
			}
		}
	}
	t.Logf("%d of %d classes of up to %d pieces have the fewest loads for certain; the slowest plan took %v", proven, small, mostSearched, slowest)
	if proven != small {
		t.Errorf("%d classes of up to %d pieces whose loads may not be the fewest", small-proven, mostSearched)
	}
}

func count(rows []Row) (pieces int) {
	for _, row := range rows {
		pieces += row.Count
	}
	return pieces
}

// planned is when the loads of a plan end with the rows as they are now.
func planned(plan Plan, rows []Row, s Supplies) float64 {
	busy := make([]float64, s.Count)
	for _, load := range plan.Loads {
		if load.Round > 1 {
			busy[load.Supply-1] += s.Changeover
		}
		var longest float64
		for _, lift := range load.Lifts {
			row := rows[lift.Row]
			one := row.Work
			one.Pieces = 1
			longest = math.Max(longest, row.Law.Time(one, row.Depth, math.Min(s.Amps, row.Density*(one.Area+one.Extra))).SI)
		}
		busy[load.Supply-1] += longest
	}
	return slices.Max(busy)
}

// All ways to hang up to eight pieces, one after another: into each load that is
// there, or a new one.
func TestAgainstEveryPlan(t *testing.T) {
	r := rand.New(rand.NewPCG(71, 72))
	for range 3000 {
		rows, s := class(r, 1+r.IntN(7), 1)
		plan, _ := Arrange(rows, s)
		e := every{rows: rows, supplies: s, loads: math.MaxInt}
		e.place(0, nil)
		if len(plan.Loads) != e.loads || plan.LeastLoads != e.loads {
			t.Fatalf("%d loads, %d at least, of %d: %+v %+v", len(plan.Loads), plan.LeastLoads, e.loads, rows, s)
		}
		if !near(plan.End, e.end, 1e-9) {
			t.Fatalf("ends after %g s, could after %g: %+v\n%+v %+v", plan.End, e.end, plan, rows, s)
		}
	}
}

// every is a search without any bound.
type every struct {
	rows     []Row
	supplies Supplies
	loads    int
	end      float64
}

func (e *every) place(i int, loads [][]int) {
	if i == len(e.rows) {
		if len(loads) > e.loads {
			return
		}
		if len(loads) < e.loads {
			e.loads, e.end = len(loads), math.Inf(1)
		}
		e.end = math.Min(e.end, e.soonest(loads))
		return
	}
	for j := range loads {
		if e.hang(append(slices.Clone(loads[j]), i)) {
			with := slices.Clone(loads)
			with[j] = append(slices.Clone(loads[j]), i)
			e.place(i+1, with)
		}
	}
	e.place(i+1, append(slices.Clone(loads), []int{i}))
}

// hang says whether pieces may hang together.
func (e *every) hang(load []int) bool {
	var current float64
	for _, i := range load {
		row := e.rows[i]
		if row.Bath != e.rows[load[0]].Bath {
			return false
		}
		current += row.Density * (row.Work.Area + row.Work.Extra)
	}
	return current <= e.supplies.Amps*(1+1e-9)
}

// soonest tries every supply for every load, in as few rounds as can be.
func (e *every) soonest(loads [][]int) float64 {
	rounds := (len(loads) + e.supplies.Count - 1) / e.supplies.Count
	best := math.Inf(1)
	busy, count := make([]float64, e.supplies.Count), make([]int, e.supplies.Count)
	var assign func(i int)
	assign = func(i int) {
		if i == len(loads) {
			best = math.Min(best, slices.Max(busy))
			return
		}
		var longest float64
		for _, j := range loads[i] {
			row := e.rows[j]
			one := row.Work
			one.Pieces = 1
			longest = math.Max(longest, row.Law.Time(one, row.Depth, math.Min(e.supplies.Amps, row.Density*(one.Area+one.Extra))).SI)
		}
		for at := range busy {
			if count[at] == rounds {
				continue
			}
			was := busy[at]
			if count[at] > 0 {
				busy[at] += e.supplies.Changeover
			}
			busy[at] += longest
			count[at]++
			assign(i + 1)
			count[at]--
			busy[at] = was
		}
	}
	assign(0)
	return best
}
