package drawwell.desktop.pictures

import drawwell.surface.Deed
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.Searched

/** The way through Comfort: its pages, a search for a speed, and a comparison that asks for readings. */
internal class ComfortWalk(
    private val does: (Event) -> Screen,
    private val pass: (Int) -> Unit,
    private val keep: (String, Screen) -> Unit,
) {
    fun through() {
        val kit = does(Event.Go(Place.Kit)) as Screen.List
        val places = kit.list.groups.flatMap { it.rows }.mapNotNull { (it.open?.event as? Event.Go)?.place }
        keep("comfort", does(Event.Go(Place.Comfort)))
        keep("letdown", does(Event.Go(Place.Letdown)))
        keep("trial", does(Event.Go(places.filterIsInstance<Place.Trial>().first())))
        search()
        readings()
    }

    private fun search() {
        does(Event.Go(Place.Now))
        does(Event.Start)
        pass(20)
        keep("search-speed-next", does(Event.StartSearch(Searched.SPEED, false)))
        does(Event.SearchAt)
        pass(40)
        does(Event.Mark(Deed.COMFORTABLE))
        keep("search-speed", does(Event.SearchAt))
        ends(does(Event.Finish))
    }

    private fun readings() {
        val trial = (does(Event.Add("trial", 0u)) as Screen.Form).form.id
        val chosen = listOf("way_a" to "level 5", "way_b" to "level 7", "trial_design" to "sessions", "outcome" to "time_to_most")
        chosen.forEach { (field, typed) -> does(Event.Enter(trial, field, typed)) }
        does(Event.BeginTrial(trial, 1u))
        does(Event.Go(Place.Now))
        does(Event.Start)
        pass(240)
        keep("so-far", does(Event.SoFar("30", "mL")))
        ends(does(Event.Finish))
        does(Event.Remove(trial))
    }

    private fun ends(after: Screen) {
        does(Event.Remove((after as Screen.Amounts).amounts.session))
        does(Event.Go(Place.Now))
    }
}
