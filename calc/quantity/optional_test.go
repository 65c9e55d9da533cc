package quantity

import "testing"

func TestSum(t *testing.T) {
	blank, bad := Optional{State: Blank}, Optional{State: Bad}
	for _, c := range []struct {
		parts []Optional
		want  Optional
	}{
		{[]Optional{Known(1), Known(2), blank}, Known(3)},
		{[]Optional{Known(1), bad, Known(2)}, bad},
		{[]Optional{blank, blank}, blank},
		{nil, blank},
	} {
		if got := Sum(c.parts...); got != c.want {
			t.Errorf("the sum of %v is %v, not %v", c.parts, got, c.want)
		}
	}
}
