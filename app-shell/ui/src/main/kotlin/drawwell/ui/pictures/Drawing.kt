package drawwell.ui.pictures

import drawwell.surface.Event
import drawwell.surface.Part
import drawwell.surface.Screen

/** What a thumb sends that lets go of a column at a height: what it read there. */
fun Screen.drawing(part: Part, height: Float): Event {
    val amounts = (this as Screen.Amounts).amounts
    val column = amounts.columns.single { it.column.part == part }
    val read = checkNotNull(column.readings.nearest(height)) { "the column can be read" }
    return Event.DrawAmount(amounts.session, part, read.typed, column.unit)
}
