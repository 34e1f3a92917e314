package overlay

import (
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

const errandRescue = "rescue"

// RescueOffer offers unsaved work that an earlier run left, one copy after the
// other, newest first. What is not answered is offered again next time.
func RescueOffer(d *desk.Desk, left []session.Rescue) desk.Overlay {
	if len(left) == 0 {
		return Message(d, d.Tell(text.RescueTitle), d.Tell(text.ListEmpty))
	}
	r := left[0]
	next := func() desk.Ask {
		if len(left) == 1 {
			return desk.Ask{Close: true}
		}
		return desk.Ask{Close: true, Open: RescueOffer(d, left[1:])}
	}
	says := []string{d.Tell(text.RescueOffer, clientName(d, r.Client), ago(d, r.Saved))}
	switch {
	case r.Path == "":
		says = append(says, d.Tell(text.RescueNoFile))
	case len(r.Differs) > 0:
		says = append(says, d.Plain(files.Shown(r.Path)), d.Tell(text.RescueDiffers))
		for _, line := range r.Differs {
			says = append(says, "  "+d.Trade(line))
		}
	default:
		says = append(says, d.Plain(files.Shown(r.Path)))
	}
	if n := len(left) - 1; n > 0 {
		says = append(says, d.Tell(text.RescueMore, n))
	}
	b := question(d, text.RescueTitle, says,
		row{title: d.Tell(text.RescueTake), do: func() desk.Ask { return rescued(d, r) }},
		row{title: d.Tell(text.RescueLater), do: next},
		row{title: d.Tell(text.RescueDrop), says: d.Tell(text.DropSure), do: func() desk.Ask {
			r.Drop()
			ask := next()
			ask.Say = d.Tell(text.RescueDropped)
			return ask
		}})
	b.hear = func(a desk.Answer) desk.Ask {
		o, ok := a.Value.(*desk.Opened)
		if !ok || a.What != errandRescue {
			return desk.Ask{}
		}
		return desk.Ask{Close: true, Take: o}
	}
	return b
}

// rescued reads the file that the copy belongs to, beside the work. The old
// copy goes only when the work is safe in a new one.
func rescued(d *desk.Desk, r session.Rescue) desk.Ask {
	says := d.Tell(text.RescueTaken, clientName(d, r.Client))
	return desk.Ask{For: d.Tell(text.RescueTitle), Run: func() desk.Answer {
		s := r.Session()
		o := &desk.Opened{Store: s, Path: r.Path, Job: &r.Job, Says: says}
		if r.Path != "" {
			if was, err := session.Open(r.Path); err == nil {
				o.Saved = was.Job
			}
		}
		if s.WriteRescue(r.Job) == nil {
			r.Drop()
		}
		return desk.Answer{What: errandRescue, Value: o, Keep: true}
	}}
}
