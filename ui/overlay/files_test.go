package overlay

import (
	"errors"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
)

// tree is a folder with a session, another file and folders in it.
func tree(t *testing.T) string {
	dir := t.TempDir()
	for _, f := range []string{"anna", "anton"} {
		s := session.New(filepath.Join(dir, f+session.Suffix), Sample(newDesk(canvas.Braille)))
		require.NoError(t, s.Save(s.Job))
	}
	require.NoError(t, os.WriteFile(filepath.Join(dir, "letter.txt"), []byte("dear\x00"), 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(dir, ".hidden"+session.Suffix), []byte("form = 1\n"), 0o600))
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "winter", "coats"), 0o700))
	return dir
}

// inTree has the desk's session in the tree, so that Open begins there.
func inTree(t *testing.T) (*desk.Desk, string) {
	at(t)
	dir := tree(t)
	d := newDesk(canvas.Braille)
	s, err := session.Open(filepath.Join(dir, "anna"+session.Suffix))
	require.NoError(t, err)
	d.Take(desk.Opened{Store: s, Path: s.Path, Saved: s.Job})
	return d, dir
}

func TestOpenShowsOnlySessions(t *testing.T) {
	d, dir := inTree(t)
	o := Open(d)
	view := shown(o, 120, 30)
	require.Contains(t, view, "Folder "+dir)
	require.Contains(t, view, "winter/")
	require.Contains(t, view, "anna"+session.Suffix)
	require.NotContains(t, view, "letter.txt")
	require.NotContains(t, view, ".hidden")

	typed(o, "show all")
	press(o, "enter", "ctrl+u")
	require.Contains(t, shown(o, 120, 30), "letter.txt")
	typed(o, "show hidden")
	press(o, "enter", "ctrl+u")
	require.Contains(t, shown(o, 120, 30), ".hidden")
}

func TestOpenAWrongFileStays(t *testing.T) {
	d, dir := inTree(t)
	o := Open(d)
	typed(o, filepath.Join(dir, "letter.txt"))
	ask := o.Hear(press(o, "enter").Run())
	require.False(t, ask.Close)
	require.True(t, ask.Warn)
	require.Contains(t, shown(o, 120, 30), "NUL byte")

	gone := o.Hear(desk.Answer{What: errandOpen, Err: errors.New("x: there is no such file")})
	require.False(t, gone.Close)
	require.Equal(t, desk.Ask{}, o.Hear(desk.Answer{What: "something else"}))
}

func TestOpenByTypedPath(t *testing.T) {
	d, dir := inTree(t)
	o := Open(d)
	typed(o, dir+"/an")
	o.Do(keys.FieldNext)
	require.Contains(t, shown(o, 200, 30), "an_", "anna and anton have no more in common")
	typed(o, "n")
	o.Do(keys.FieldNext)
	require.Contains(t, shown(o, 200, 30), "anna"+session.Suffix+"_")
	ask := o.Hear(press(o, "enter").Run())
	require.True(t, ask.Close)
	require.Equal(t, filepath.Join(dir, "anna"+session.Suffix), ask.Take.Path)
	require.Equal(t, ask.Take.Path, session.Recent()[0].Path, "remembered")
	require.Contains(t, shown(Open(d), 120, 30), "> Maro Tellin", "the last client is in hand")
}

func TestOpenLeavesUnsavedWorkOpen(t *testing.T) {
	d, dir := inTree(t)
	job := d.Job()
	job.Client.Name = "Other"
	d.Change(job, "Client")
	o := Open(d)
	typed(o, "anton")
	ask := o.Hear(press(o, "enter").Run())
	require.True(t, ask.Close)
	require.Nil(t, ask.Open, "nothing is asked: both stay open")
	require.Equal(t, filepath.Join(dir, "anton"+session.Suffix), ask.Take.Path)
	require.False(t, ask.Take.Anew)
}

func TestClientsListsWhatIsOpenAndWhatWas(t *testing.T) {
	d, dir := inTree(t)
	first := d.At()
	s := session.New(filepath.Join(dir, "bea"+session.Suffix), Sample(d))
	s.Job.Client.Name = "Bea Example"
	require.True(t, d.Open(desk.Opened{Store: s, Path: s.Path, Saved: s.Job}))
	require.False(t, d.Open(desk.Opened{Store: s, Path: s.Path, Saved: s.Job}), "it is open")
	job := d.Job()
	job.Client.Notes = "x"
	d.Change(job, "Notes")
	session.Remember(filepath.Join(dir, "anton"+session.Suffix), Sample(d))
	o := Clients(d, func(desk.SeatID) (int, int) { return 7, 37 })
	text := shown(o, 120, 30)
	require.Contains(t, text, "Bea Example")
	require.Contains(t, text, "* not saved")
	require.Contains(t, text, "here, step 7 of 37")
	require.Contains(t, text, "Worked on before")
	require.Contains(t, text, "anton"+session.Suffix)
	require.Equal(t, first, press(o, "enter").Seat, "Enter alone goes to the other one")
	typed(o, "anton")
	require.NotNil(t, press(o, "enter").Run, "an earlier one is opened")
}

func TestOpenGoesIntoFolders(t *testing.T) {
	d, dir := inTree(t)
	o := Open(d)
	typed(o, "winter")
	press(o, "enter")
	require.Contains(t, shown(o, 120, 30), "Folder "+filepath.Join(dir, "winter"))
	require.Contains(t, shown(o, 120, 30), "coats/")
	typed(o, "..")
	press(o, "enter")
	require.Contains(t, shown(o, 120, 30), "anna")
}

func TestHomeInPaths(t *testing.T) {
	home := at(t)
	require.Equal(t, home, whole("~", "/x"))
	require.Equal(t, filepath.Join(home, "a"), whole("~/a", "/x"))
	require.Equal(t, "/x/a", whole("a", "/x"))
	require.Equal(t, "/x/a/", whole("a/", "/x"))
	require.Equal(t, "/y", whole("/y", "/x"))
}

func TestSaveAs(t *testing.T) {
	d, dir := inTree(t)
	o := SaveAs(d)
	require.Contains(t, shown(o, 120, 30), "Name: anna"+session.Suffix+"_")
	press(o, "ctrl+u")
	require.Equal(t, desk.Ask{Say: "Not now: give the file a name.", Warn: true}, press(o, "enter"))
	typed(o, "new")
	ask := press(o, "enter")
	require.Equal(t, filepath.Join(dir, "new"+session.Suffix), ask.Save.Path)
	require.False(t, ask.Save.Over)

	press(o, "ctrl+u")
	typed(o, "anton")
	ask = o.Hear(press(o, "enter").Run())
	require.Contains(t, shown(ask.Open, 120, 30), "holds other work, of Maro Tellin")
	require.Equal(t, filepath.Join(dir, "anton-2"+session.Suffix), press(ask.Open, "enter").Save.Path)
	require.True(t, press(ask.Open, "down", "enter").Save.Over)
	require.Nil(t, press(ask.Open, "down", "enter").Save)

	press(o, "ctrl+u")
	typed(o, "summer/skirt")
	require.Contains(t, shown(o, 120, 30), "New folder "+filepath.Join(dir, "summer"))
	press(o, "enter")
	require.DirExists(t, filepath.Join(dir, "summer"))
	require.Equal(t, filepath.Join(dir, "summer", "skirt"+session.Suffix), press(o, "enter").Save.Path)
}

func TestSaveAsSuggestsTheClient(t *testing.T) {
	at(t)
	d := newDesk(canvas.Braille)
	require.Equal(t, "client"+session.Suffix, suggested(d))
	job := d.Job()
	job.Client.Name = "Ána  O'Neil / 2"
	d.Change(job, "Client")
	require.Equal(t, "ána-o-neil-2"+session.Suffix, suggested(d))
}

func TestBeside(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a"+session.Suffix)
	require.Equal(t, filepath.Join(dir, "a-2"+session.Suffix), beside(path))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "a-2"+session.Suffix), nil, 0o600))
	require.Equal(t, filepath.Join(dir, "a-3"+session.Suffix), beside(path))
}
