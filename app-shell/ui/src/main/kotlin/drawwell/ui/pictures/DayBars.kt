package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.surface.DayBar
import drawwell.surface.Part
import drawwell.ui.look.Colours

/** What each side gave, stacked from the ground; each side has its own texture. */
internal object DayBars {
    fun DrawScope.bar(bar: DayBar, area: Rect, colours: Colours) {
        val wide = WIDE.toPx()
        val middle = (area.left + bar.at * area.width).coerceIn(area.left + wide / 2, area.right - wide / 2)
        var ground = area.bottom
        fun stack(part: Part, height: Float?) {
            if (height == null) return
            val tall = height * area.height
            filling(part, Rect(middle - wide / 2, ground - tall, middle + wide / 2, ground), colours)
            ground -= tall
        }
        stack(Part.LEFT, bar.left)
        stack(Part.RIGHT, bar.right)
        stack(Part.TOGETHER, bar.together)
        if (bar.open) openTop(middle, wide, ground, colours)
        if (bar.feed) drawCircle(colours.page.ink, 4.dp.toPx(), Offset(middle, area.bottom + 9.dp.toPx()), style = Stroke(2.dp.toPx()))
    }

    /** Left is plain, right is lined, both together is split down the middle. */
    fun DrawScope.filling(part: Part, area: Rect, colours: Colours) {
        if (area.height < 1f) return
        val water = colours.water.ground
        val line = 1.5.dp.toPx()
        when (part) {
            Part.LEFT -> drawRect(water, area.topLeft, area.size)
            Part.RIGHT -> {
                val step = 4.dp.toPx()
                var y = area.bottom - step / 2
                while (y > area.top) {
                    drawLine(colours.texture, Offset(area.left, y), Offset(area.right, y), step / 2)
                    y -= step
                }
            }
            Part.TOGETHER -> {
                val half = (area.width - 2.dp.toPx()) / 2
                drawRect(water, area.topLeft, Size(half, area.height))
                drawRect(water, Offset(area.right - half, area.top), Size(half, area.height))
            }
        }
        drawRect(colours.texture, area.topLeft, area.size, style = Stroke(line * 0.7f))
        drawLine(colours.shaft.edge, area.topLeft, area.topRight, line * 1.4f)
    }

    /** Some of it is not known: the walls go on, and nothing closes them. */
    private fun DrawScope.openTop(middle: Float, wide: Float, ground: Float, colours: Colours) {
        val dashes = PathEffect.dashPathEffect(floatArrayOf(3.dp.toPx(), 3.dp.toPx()))
        listOf(middle - wide / 2, middle + wide / 2).forEach { x ->
            drawLine(colours.shaft.edge, Offset(x, ground), Offset(x, ground - 18.dp.toPx()), 2.dp.toPx(), StrokeCap.Butt, dashes)
        }
    }

    private val WIDE = 14.dp
}
