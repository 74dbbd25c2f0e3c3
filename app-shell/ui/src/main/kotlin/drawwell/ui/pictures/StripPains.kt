package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.surface.PainMark
import drawwell.ui.look.Colours

/** Pain, under the strip: a pin, the longer the worse; a ring where it was not said; below them an arrow where the pump was turned down. */
internal object StripPains {
    fun DrawScope.pains(pains: List<PainMark>, top: Float, room: Float, colours: Colours) {
        val colour = colours.careful.ink
        val small = room < 16.dp.toPx()
        val pen = if (small) 1.5.dp.toPx() else 2.5.dp.toPx()
        val half = if (small) 2.dp.toPx() else 4.dp.toPx()
        val from = top + pen
        val arrows = top + room - half
        pains.forEach { pain ->
            val x = (pain.at * size.width).coerceIn(half + pen, size.width - half - pen)
            val score = pain.height
            when {
                pain.turnedDown -> arrow(x, arrows, half, pen, colours)
                score == null -> drawCircle(colour, half - pen / 2, Offset(x, from + half), style = Stroke(pen * 0.7f))
                else -> {
                    val to = from + half + (arrows - half * 2.5f - from) * score.coerceIn(0f, 1f)
                    drawLine(colour, Offset(x, from), Offset(x, to), pen, StrokeCap.Round)
                    drawCircle(colour, half * 0.8f, Offset(x, to))
                }
            }
        }
    }

    private fun DrawScope.arrow(x: Float, tip: Float, half: Float, pen: Float, colours: Colours) {
        val path = Path().apply {
            moveTo(x - half, tip - half)
            lineTo(x, tip)
            lineTo(x + half, tip - half)
        }
        drawPath(path, colours.careful.ink, style = Stroke(pen, cap = StrokeCap.Round, join = StrokeJoin.Round))
    }
}
