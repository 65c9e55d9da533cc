package measure

import "testing"

func TestAReportIsRead(t *testing.T) { // in the shape of Lighthouse 12's reports
	report := []byte(`{"categories": {"accessibility": {"score": 0.93, "auditRefs": [{"id": "a", "weight": 3}, {"id": "b", "weight": 0}]},
		"performance": {"score": null, "auditRefs": []}},
		"audits": {"a": {"score": 0.5, "title": "Names"}, "b": {"score": 0, "title": "Not counted"}}}`)
	j, err := readJudgement(report, []string{"accessibility"})
	if err != nil || j.marks["accessibility"] != 93 || len(j.lost) != 1 || j.lost[0] != "Names (0.50)" {
		t.Errorf("read %+v, %v", j, err)
	}
	for _, name := range []string{"performance", "best-practices"} {
		if _, err := readJudgement(report, []string{name}); err == nil {
			t.Errorf("no marks for %s, and no fault", name)
		}
	}
}
