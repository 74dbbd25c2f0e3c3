package drawwell.ui.pictures

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.PlotPicture

/** Where the parts of a plot lie: the picture itself is as tall as ever, whatever the words round it need. */
internal class PlotFrame(plot: PlotPicture, wide: Float, measurer: TextMeasurer, style: TextStyle, density: Density) {
    val scale = SideScale(plot.scale, null, false, measurer, style, topOver = true)
    val words = StripWords(measurer, style, style)
    private val within = wide - scale.beside(wide, density)
    val over = PlotHead(plot.stretches, within, measurer, style, density)
    val marks = PlotMarks(plot.marks, within, measurer, style, density)

    /** The strip of the stretches. */
    val head: Rect

    /** The picture itself. */
    val area: Rect
    val tall: Float

    /** Where the flags of the marks stand, over the topmost label of the scale. */
    val flags: Float

    init {
        with(density) {
            head = Rect(0f, over.above, within, over.above + if (plot.stretches.isEmpty()) 0f else TEXTURE.toPx())
            flags = head.bottom + marks.above + if (plot.marks.isEmpty() && plot.stretches.isEmpty()) 0f else APART.toPx()
            val top = flags + scale.above(wide)
            area = Rect(0f, top, within, top + TALL.toPx())
            tall = area.bottom + if (plot.ticks.isEmpty()) APART.toPx() else words.line() + APART.toPx() * 2
        }
    }

    private companion object {
        val TEXTURE = 16.dp
        val APART = 4.dp
        val TALL = 180.dp
    }
}
