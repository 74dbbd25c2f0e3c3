package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipRect
import androidx.compose.ui.unit.dp
import drawwell.surface.ProductionBar
import drawwell.ui.look.Colours

/** A bar a day: filled as far as it was observed, hatched above; one that does not count is hatched alone. */
internal object WeekBars {
    fun DrawScope.bar(bar: ProductionBar, area: Rect, colours: Colours) {
        val gap = minOf(2.dp.toPx(), (bar.to - bar.from) * area.width / 4)
        val left = area.left + bar.from * area.width + gap / 2
        val right = area.left + bar.to * area.width - gap / 2
        val height = bar.height
        if (height == null) {
            drawLine(colours.page.edge, Offset(left, area.bottom - 3.dp.toPx()), Offset(right, area.bottom - 3.dp.toPx()), 1.dp.toPx())
        } else {
            val whole = Rect(left, area.bottom - height * area.height, right, area.bottom)
            val filled = if (bar.counts) whole.height * bar.observed else 0f
            hatch(Rect(whole.left, whole.top, whole.right, whole.bottom - filled), colours)
            if (filled > 0f) {
                val ground = Rect(whole.left, whole.bottom - filled, whole.right, whole.bottom)
                drawRect(colours.water.ground, ground.topLeft, ground.size)
            }
            if (bar.counts) drawLine(colours.shaft.edge, whole.topLeft, whole.topRight, 2.dp.toPx())
        }
        bar.byTheClock?.let { clock ->
            val y = area.bottom - clock * area.height
            val inside = height != null && clock < height * bar.observed && bar.counts
            val reach = (right - left) / 4
            drawLine(if (inside) colours.water.edge else colours.shaft.edge, Offset(left + reach, y), Offset(right - reach, y), 1.5.dp.toPx())
        }
    }

    /** Slanting lines, so that what is missing is seen without any colour. */
    private fun DrawScope.hatch(area: Rect, colours: Colours) {
        if (area.height < 1f || area.width < 1f) return
        val step = 5.dp.toPx()
        clipRect(area.left, area.top, area.right, area.bottom) {
            var x = area.left - area.height
            while (x < area.right) {
                drawLine(colours.texture, Offset(x, area.bottom), Offset(x + area.height, area.top), 1.dp.toPx())
                x += step
            }
        }
        if (area.width > 4.dp.toPx()) {
            drawRect(colours.texture, area.topLeft, Size(area.width, area.height), style = Stroke(0.75.dp.toPx()))
        }
    }
}
