package drawwell.desktop.pictures

import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen

/** The way through Kit: a pump, a check of it reading by reading, what that says, which flange to try, and which pump. */
internal class KitWalk(private val does: (Event) -> Screen, private val keep: (String, Screen) -> Unit) {
    fun through() {
        val kit = does(Event.Go(Place.Kit)) as Screen.List
        keep("kit", kit)
        val pumps = kit.list.groups.first().rows.mapNotNull { it.open?.event }
        keep("kit-pump-unchecked", does(pumps.last()))
        val pump = pumps.first()
        val findings = does(pump) as Screen.Findings
        keep("kit-pump", findings)
        keep("kit-pump-details", findings.opened("details"))
        does(pump)
        check(findings)
        keep("kit-fit", does(Event.Go(Place.Fit)))
        keep("kit-choice", does(Event.Go(Place.Choice)))
    }

    private fun check(findings: Screen.Findings) {
        val begun = findings.opened("check") as Screen.Check
        keep("kit-check-fresh", begun)
        val check = begun.check.reading.id
        listOf("262", "264").forEach { read(it) }
        keep("kit-check", read("263"))
        listOf("256", "200").forEach { read(it) }
        keep("kit-check-asks", here())
        does(Event.Undo)
        listOf("258", "257").forEach { read(it) }
        LEVELS.forEach { (level, figures) ->
            SIDES.forEach { side ->
                does(Event.ReadAt(check, level, side))
                figures.forEach { read(it) }
            }
        }
        keep("kit-check-levels", here())
        keep("kit-pump-checked", does((here() as Screen.Check).check.done.event))
    }

    private fun here() = does(Event.Wake)

    private fun read(figure: String): Screen {
        val check = (here() as Screen.Check).check
        return does(Event.Enter(check.reading.id, check.reading.field, figure))
    }

    private fun Screen.Findings.opened(key: String) = does(findings.actions.single { it.key == key }.event)

    private companion object {
        val SIDES = listOf("left", "right")
        val LEVELS = mapOf(1u to listOf("62", "64"), 4u to listOf("150", "148"), 6u to listOf("205", "207"))
    }
}
