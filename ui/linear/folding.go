package linear

import (
	"slices"
	"strings"

	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/ui/text"
)

// clothFold folds her cloth otherwise.
func (r *room) clothFold(line string) {
	named := strings.NewReplacer(" ", "_", "center", "centre").Replace(strings.ToLower(strings.TrimSpace(line)))
	c, _ := laid.ClothOf(r.d.Job(), laid.Main)
	if named == "" || !slices.Contains(lay.Folds, named) {
		var all []string
		for _, f := range lay.Folds {
			all = append(all, strings.ReplaceAll(f, "_", " "))
		}
		r.say(text.HearFoldAsk, r.d.Words.Pass(laid.Folds(c)), strings.Join(all, ", "))
		return
	}
	hers, _ := r.d.Job().Cloth(laid.Main)
	hers.Name, hers.Fold = laid.Main, named
	c.Fold = named
	r.change(r.d.Job().WithCloth(hers), r.d.Words.Say(text.HearFoldSet, r.d.Words.Pass(laid.Folds(c))))
	r.sayLay("")
}
