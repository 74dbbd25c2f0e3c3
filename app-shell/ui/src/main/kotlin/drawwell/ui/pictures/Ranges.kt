package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.clipRect
import androidx.compose.ui.unit.dp
import drawwell.ui.look.Colours

/** A range that somebody states, in clay and not in water: slanting lines, each range with a slant of its own. */
internal object Ranges {
    /** The first is filled too. */
    fun filled(place: Int) = place == 0

    /** How far its lines lean, of its own height. */
    fun slant(place: Int): Float = if (place % 2 == 0) 1f else -1f

    fun DrawScope.range(area: Rect, place: Int, colours: Colours) {
        if (filled(place)) drawRect(colours.plain.ground, area.topLeft, area.size)
        clipRect(area.left, area.top, area.right, area.bottom) {
            val lean = area.height * slant(place)
            var x = area.left - area.height
            while (x < area.right + area.height) {
                drawLine(colours.plain.edge, Offset(x, area.bottom), Offset(x + lean, area.top), HAIR.toPx())
                x += APART.toPx()
            }
        }
    }

    val APART = 9.dp
    val HAIR = 1.dp
}
