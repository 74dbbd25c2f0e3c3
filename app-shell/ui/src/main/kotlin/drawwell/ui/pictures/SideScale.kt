package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick
import drawwell.ui.look.Colours

/**
 * Labels along the height: beside the picture, or where that would leave too
 * little of it, the topmost alone over its own line. An aim goes before them.
 * Where the topmost also carries the unit, it may stand over its line while the
 * others are beside it, so that it takes nothing from the picture.
 */
internal class SideScale(
    private val scale: List<Tick>,
    private val aim: Tick?,
    private val small: Boolean,
    private val measurer: TextMeasurer,
    private val style: TextStyle,
    private val topOver: Boolean = false,
) {
    private val top = scale.maxByOrNull { it.at }
    private val widest = ((if (topOver) scale - setOfNotNull(top) else scale) + listOfNotNull(aim)).maxOfOrNull { measurer.measure(it.label, style).size.width } ?: 0

    fun DrawScope.over(): Boolean = over(size.width)

    private fun over(wide: Float): Boolean = small || widest > wide * MOST

    /** What the labels take away on the right. */
    fun DrawScope.beside(): Float = beside(size.width, this)

    fun beside(wide: Float, density: Density): Float = if (over(wide) || widest == 0) 0f else widest + with(density) { 8.dp.toPx() }

    /** What the topmost label takes away above. */
    fun DrawScope.above(): Float = above(size.width)

    fun above(wide: Float): Float = if ((topOver || over(wide)) && scale.isNotEmpty()) line() else line() / 2

    /** The labels and the lines that lead to them, under all else. */
    fun DrawScope.draw(area: Rect, colours: Colours) {
        if (over()) {
            top?.let { top ->
                val y = area.y(top)
                dotted(y, area, colours)
                drawText(measurer.measure(top.label, style), topLeft = Offset(area.left, y - line() - 1.dp.toPx()))
            }
            return
        }
        val taken = listOfNotNull(aim).map { area.y(it) }.toMutableList()
        scale.sortedByDescending { it.at }.forEach { tick ->
            val y = area.y(tick)
            dotted(y, area, colours)
            if (topOver && tick == top) return@forEach over(tick, y)
            if (taken.none { kotlin.math.abs(it - y) < line() }) {
                beside(tick, y, style)
                taken += y
            }
        }
    }

    /** The aim, over all else. */
    fun DrawScope.aim(area: Rect, colours: Colours) {
        if (aim == null) return
        val y = area.y(aim)
        val dashes = PathEffect.dashPathEffect(floatArrayOf(8.dp.toPx(), 5.dp.toPx()))
        drawLine(colours.page.ink, Offset(area.left, y), Offset(area.right, y), 1.5.dp.toPx(), pathEffect = dashes)
        val ink = style.copy(color = colours.page.ink)
        if (!over()) return beside(aim, y, ink)
        val words = measurer.measure(aim.label, ink.copy(background = colours.page.ground))
        drawText(words, topLeft = Offset(area.right - words.size.width, y - words.size.height - 2.dp.toPx()))
    }

    private fun DrawScope.over(tick: Tick, y: Float) {
        val words = measurer.measure(tick.label, style)
        drawText(words, topLeft = Offset(size.width - words.size.width, y - words.size.height - 1.dp.toPx()))
    }

    private fun DrawScope.beside(tick: Tick, y: Float, style: TextStyle) {
        val words = measurer.measure(tick.label, style)
        val top = (y - words.size.height / 2f).coerceIn(0f, (size.height - words.size.height).coerceAtLeast(0f))
        drawText(words, topLeft = Offset(size.width - words.size.width, top))
    }

    private fun DrawScope.dotted(y: Float, area: Rect, colours: Colours) {
        val dots = PathEffect.dashPathEffect(floatArrayOf(1.dp.toPx(), 6.dp.toPx()))
        drawLine(colours.page.edge, Offset(area.left, y), Offset(area.right, y), 1.dp.toPx(), pathEffect = dots)
    }

    private fun line(): Float = measurer.measure("0", style).size.height.toFloat()

    private fun Rect.y(tick: Tick) = bottom - tick.at * height

    private companion object {
        /** The most of the picture's width that may go to its labels. */
        const val MOST = 0.27f
    }
}
