package session

import (
	"encoding/json"
	"path/filepath"
	"slices"
	"time"

	"chalkfold/pattern"
	"chalkfold/ui/files"
)

// Client is one of the clients worked on last.
type Client struct {
	Name    string    `json:"name"`
	Path    string    `json:"path"`
	Garment string    `json:"garment"`
	Taken   int       `json:"taken"` // measurements
	Seen    time.Time `json:"seen"`
}

// mostRecent is how many clients are remembered.
const mostRecent = 50

func recentFile() string { return stateFolder("recent.json") }

// Recent are the clients worked on last, newest first. Where nothing is
// remembered, or what is remembered cannot be read, there are none.
func Recent() []Client {
	var all []Client
	path := recentFile()
	if path == "" {
		return nil
	}
	text, _, err := files.Read(path, SizeLimit)
	if err != nil || json.Unmarshal(text, &all) != nil {
		return nil
	}
	return all
}

// Remember puts a client on top of the list. That it cannot be written is no
// reason to stop anybody's work.
func Remember(path string, job pattern.Job) {
	file := recentFile()
	if file == "" || path == "" {
		return
	}
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	all := slices.DeleteFunc(Recent(), func(c Client) bool { return c.Path == path })
	all = slices.Insert(all, 0, Client{Name: job.Client.Name, Path: path, Garment: job.Style.Garment(), Taken: job.Body.Len(), Seen: time.Now().UTC().Truncate(time.Second)})
	if len(all) > mostRecent {
		all = all[:mostRecent]
	}
	text, err := json.MarshalIndent(all, "", " ")
	if err != nil || files.Folder(filepath.Dir(file)) != nil {
		return
	}
	_ = files.Write(file, append(text, '\n'), files.Options{Mode: files.Private})
}
