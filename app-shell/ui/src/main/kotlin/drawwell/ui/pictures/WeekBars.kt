package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipRect
import androidx.compose.ui.unit.dp
import drawwell.surface.ProductionBar
import drawwell.ui.look.Colours

/** A bar a day or a week: filled as far as it was observed and hatched above; one that does not count is an outline. */
internal object WeekBars {
    fun DrawScope.bar(bar: ProductionBar, area: Rect, colours: Colours) {
        val wide = (bar.to - bar.from) * area.width
        val gap = minOf(2.dp.toPx(), wide / 4)
        val left = area.left + bar.from * area.width + gap / 2
        val right = left + wide - gap
        val height = bar.height
        if (height == null) {
            unknown(left, right, area.bottom, colours)
        } else {
            standing(Rect(left, area.bottom - height * area.height, right, area.bottom), bar, colours)
        }
        bar.byTheClock?.let { clock ->
            val dot = minOf(1.5.dp.toPx(), (right - left) / 4)
            drawCircle(colours.bars.ink, dot, Offset((left + right) / 2, area.bottom - clock * area.height))
        }
    }

    private fun DrawScope.standing(whole: Rect, bar: ProductionBar, colours: Colours) {
        val seen = whole.bottom - whole.height * bar.observed
        if (bar.counts) {
            drawRect(colours.bars.ground, Offset(whole.left, seen), whole.copy(top = seen).size)
            drawLine(colours.bars.edge, whole.topLeft, whole.topRight, TOP.toPx())
        } else {
            drawRect(colours.bars.edge, whole.topLeft, whole.size, style = Stroke(HAIR.toPx()))
        }
        hatch(whole.copy(bottom = seen), colours)
    }

    /** Slanting lines, so that what was not seen is told without any colour. */
    private fun DrawScope.hatch(area: Rect, colours: Colours) {
        if (area.height < 1f || area.width < 1f) return
        clipRect(area.left, area.top, area.right, area.bottom) {
            var x = area.left - area.height
            while (x < area.right) {
                drawLine(colours.bars.edge, Offset(x, area.bottom), Offset(x + area.height, area.top), HAIR.toPx())
                x += STEP.toPx()
            }
        }
    }

    /** Nothing is known of it: a dash where it would stand. */
    private fun DrawScope.unknown(left: Float, right: Float, ground: Float, colours: Colours) {
        val y = ground - 4.dp.toPx()
        drawLine(colours.bars.edge, Offset(left, y), Offset(right, y), HAIR.toPx())
    }

    private val TOP = 2.dp
    private val HAIR = 1.dp
    private val STEP = 6.dp
}
