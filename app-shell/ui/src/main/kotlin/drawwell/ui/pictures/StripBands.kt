package drawwell.ui.pictures

import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.surface.Band
import drawwell.surface.Phase
import drawwell.ui.look.Colours

/** The phases of a session, each known by its texture: fine teeth, calm water, a dotted bed, or nothing said. */
internal object StripBands {
    fun DrawScope.bands(bands: List<Band>, area: Rect, colours: Colours, words: StripWords?) {
        bands.forEach { band ->
            val gap = 1.dp.toPx()
            val left = area.left + band.from * area.width + gap
            val right = (area.left + band.to * area.width - gap).coerceAtLeast(left + gap)
            val part = Rect(left, area.top, right, area.bottom)
            val corner = CornerRadius(minOf(4.dp.toPx(), part.width / 2))
            drawRoundRect(colours.shaft.ground, part.topLeft, part.size, corner)
            when (band.phase) {
                Phase.LETDOWN -> teeth(part, colours)
                Phase.EXPRESSION -> calm(part, colours)
                Phase.REST -> bed(part, colours)
                Phase.UNSAID -> Unit
            }
            if (band.phase != Phase.LETDOWN) words?.run { name(band.label, part, colours.over(band.phase)) }
        }
    }

    private fun Colours.over(phase: Phase) = if (phase == Phase.EXPRESSION) water.ink else shaft.ink

    /** Short and quick. */
    private fun DrawScope.teeth(part: Rect, colours: Colours) {
        val step = 5.dp.toPx()
        val tall = part.height * FILL
        var x = part.left + step / 2
        while (x < part.right - 1) {
            drawLine(colours.texture, Offset(x, part.bottom), Offset(x, part.bottom - tall), 2.dp.toPx())
            x += step
        }
    }

    /** Full and slow. */
    private fun DrawScope.calm(part: Rect, colours: Colours) {
        val tall = part.height * FILL
        val from = Offset(part.left, part.bottom - tall)
        val corner = CornerRadius(minOf(4.dp.toPx(), part.width / 2))
        drawRoundRect(colours.water.ground, from, Size(part.width, tall), corner)
        drawRoundRect(colours.texture, from, Size(part.width, tall), corner, Stroke(1.dp.toPx()))
    }

    private fun DrawScope.bed(part: Rect, colours: Colours) {
        val y = part.bottom - 5.dp.toPx()
        val dots = PathEffect.dashPathEffect(floatArrayOf(0.1f, 7.dp.toPx()))
        drawLine(colours.shaft.edge, Offset(part.left + 3.dp.toPx(), y), Offset(part.right, y), 3.dp.toPx(), StrokeCap.Round, dots)
    }

    /** How much of a band its texture takes, from below; the lines keep to the rest. */
    const val FILL = 0.36f
}
