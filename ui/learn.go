package ui

import (
	"slices"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/overlay"
	"chalkfold/ui/stage"
)

// pupil is a stage in which a question can take the keys and a lesson can show
// a page.
type pupil interface {
	Asking() bool
	AskDo(id keys.ID) desk.Ask
	AskType(k desk.Key) desk.Ask
	OnPage() bool
	LessonDo(id keys.ID) desk.Ask
	Offers() (offers []desk.Offer, only bool)
	Study(r desk.Running)
	Rest()
	Word() string
}

// pupil is the stage that has the keys, nil while anything lies over it.
func (m *Model) pupil() pupil {
	if m.top() != nil || m.small() {
		return nil
	}
	p, _ := m.stage().(pupil)
	return p
}

// learnKey is what a key asks for at a question or in a lesson: their keys come
// before those of the stage.
func (m *Model) learnKey(name string) (id keys.ID, ok bool) {
	p := m.pupil()
	switch {
	case p == nil:
		return "", false
	case p.Asking():
		return m.d.Keys.ByKey(keys.Question, name)
	case p.OnPage() && !m.stage().Typing():
		id, ok = m.d.Keys.ByKey(keys.Lesson, name)
		a, _ := m.d.Keys.Find(id)
		return id, ok && a.Where == keys.Lesson
	}
	return "", false
}

// stageKeys work everywhere and are the stage's to do; at a question they are
// the question's.
var stageKeys = []keys.ID{keys.Room, keys.FieldNext, keys.FieldBack, keys.Accept, keys.Back, keys.OtherUnit}

// learn does what belongs to questions and lessons; false: it is none of it.
func (m *Model) learn(id keys.ID) (tea.Cmd, bool) {
	a, _ := m.d.Keys.Find(id)
	switch p := m.pupil(); {
	case id == keys.Lessons:
		return m.lay(overlay.Lessons(m.d)), true
	case id == keys.Faults:
		return m.lay(overlay.Faults(m.d, m.spoil)), true
	case p == nil:
		return nil, false
	case p.Asking() && (a.Where == keys.Question || slices.Contains(stageKeys, id)):
		return m.fulfil(p.AskDo(id), m.stage()), true
	case p.OnPage() && a.Where == keys.Lesson:
		return m.fulfil(p.LessonDo(id), m.stage()), true
	case p.OnPage() && id == keys.Accept && m.at == desk.Measure && m.stage().Typing():
		return m.taken(p), true
	case id == "word":
		return m.lay(overlay.WordsAt(m.d, p.Word())), true
	}
	return nil, false
}

// taken accepts a measure that a lesson asks for, and goes on.
func (m *Model) taken(p pupil) tea.Cmd {
	cmd := m.fulfil(m.stage().Do(keys.Accept), m.stage())
	if m.d.Warn {
		return cmd
	}
	return tea.Batch(cmd, m.fulfil(p.LessonDo("page-next"), m.stage()))
}

// spoil shows a fault on purpose.
func (m *Model) spoil(id string) desk.Ask {
	s, ok := m.stages[desk.True-1].(*stage.True)
	if !ok {
		return desk.Ask{}
	}
	return s.Fault(id)
}

// study goes to a page of a lesson, in the stage that shows it; without a
// lesson no stage shows one any more.
func (m *Model) study(r desk.Running) tea.Cmd {
	m.d.Study(r)
	to := stage.StageOf(r)
	var cmd tea.Cmd
	if to != desk.NoStage && to != m.at {
		cmd = m.goTo(to)
	}
	for i, s := range m.stages {
		p, ok := s.(pupil)
		switch {
		case !ok:
		case desk.StageID(i+1) == to:
			p.Study(r)
		default:
			p.Rest()
		}
	}
	m.note()
	return cmd
}

// acts are the actions of the stage, those of a question or a lesson first.
func (m *Model) acts() []desk.Offer {
	p, ok := m.stage().(pupil)
	if !ok || m.small() {
		return m.stage().Actions()
	}
	first, only := p.Offers()
	if only {
		return first
	}
	for _, o := range m.stage().Actions() {
		if !m.covered(o.ID) {
			first = append(first, o)
		}
	}
	return first
}

// covered says that a lesson has all keys of an action of the stage.
func (m *Model) covered(id keys.ID) bool {
	a, ok := m.d.Keys.Find(id)
	for _, k := range a.Keys {
		if _, taken := m.learnKey(k); !taken {
			return false
		}
	}
	return ok && len(a.Keys) > 0
}
