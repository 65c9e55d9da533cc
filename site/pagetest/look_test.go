package pagetest

import "testing"

// looks are what is held to of how the page looks, in every engine.
var looks = []check{
	{"theme", themeIsChosen},
	{"theme without storage", themeWithoutStorage},
}

func TestLook(t *testing.T) { holdAll(t, looks) }

// inTheme is which theme is seen: by the page's ground, by the scheme that the
// browser's own controls take, and by the one bar's colour that counts.
const inTheme = `const root = getComputedStyle(document.documentElement)
	const bars = [...document.querySelectorAll('meta[name=theme-color]')].filter((bar) => matchMedia(bar.media).matches)
	return [root.backgroundColor === 'rgb(23, 22, 20)' ? 'dark' : 'light', root.colorScheme, ...bars.map((bar) => bar.dataset.theme)].join()`

func (p *page) choose(theme string) {
	p.Helper()
	p.ask(`document.querySelector('[name=theme][value="' + arguments[0] + '"]').click()`, theme)
}

func (p *page) sees(theme string) {
	p.Helper()
	if got := p.say(inTheme); got != theme+","+theme+","+theme {
		p.Errorf("the ground, the scheme and the bar are %s, not %s", got, theme)
	}
}

// themeIsChosen: the system asks for light ones. What is chosen is there before
// anything of the page is, stays over a reload, and is no part of the job.
func themeIsChosen(t *testing.T, p *page) {
	p.sees("light")
	p.click("#example")
	p.answers("brass")
	p.choose("dark")
	p.sees("dark")
	if off := p.ask(`return document.getElementById('undo').disabled`); off != false {
		t.Error("choosing a theme took away what could be undone")
	}
	p.load("/?with=early")
	if early := p.say(`return document.documentElement.dataset.early`); early != "dark" {
		t.Errorf("when the page's body begins the theme is %q", early)
	}
	p.sees("dark")
	if chosen := p.say(`return document.querySelector('[name=theme]:checked').value`); chosen != "dark" {
		t.Errorf("after a reload the switch stands at %q", chosen)
	}
	p.choose("light")
	p.sees("light")
	p.choose("")
	p.sees("light")
	p.load("/?with=early")
	if early := p.ask(`return document.documentElement.dataset.early`); early != "" {
		t.Errorf("the system's theme was chosen, and the page begins with %v", early)
	}
}

func themeWithoutStorage(t *testing.T, p *page) {
	p.load("/?with=nostorage")
	p.choose("dark")
	p.sees("dark")
}
