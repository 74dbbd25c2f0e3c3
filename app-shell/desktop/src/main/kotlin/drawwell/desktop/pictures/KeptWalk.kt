package drawwell.desktop.pictures

import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen

/** The way through kept milk: the shelf, a bottle, and what to use first. */
internal class KeptWalk(private val does: (Event) -> Screen, private val keep: (String, Screen) -> Unit) {
    fun through() {
        val page = does(Event.Go(Place.Kept)) as Screen.Findings
        keep("kept", page)
        val bottles = page.findings.sections.flatMap { it.rows }.mapNotNull { (it.open?.event as? Event.Go)?.place }
        keep("kept-bottle", does(Event.Go(bottles.filterIsInstance<Place.Container>().first())))
        keep("use-first", does(Event.Go(Place.UseFirst(180u))))
        keep("kept-rules", does(Event.Go(Place.Entry("keeping"))))
        does(Event.Go(Place.Now))
    }
}
