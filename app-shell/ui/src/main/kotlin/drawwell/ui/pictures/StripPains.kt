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

/** Pain, under the strip: the longer the worse; an arrow where the pump was turned down; a ring where it was not said. */
internal object StripPains {
    fun DrawScope.pains(pains: List<PainMark>, top: Float, room: Float, colours: Colours) {
        val colour = colours.careful.ink
        val pen = 2.5.dp.toPx()
        pains.forEach { pain ->
            val half = minOf(4.dp.toPx(), room / 4)
            val x = (pain.at * size.width).coerceIn(half + pen, size.width - half - pen)
            val from = top + 2.dp.toPx()
            val score = pain.height
            if (score == null) {
                drawCircle(colour, half, Offset(x, from + half + pen / 2), style = Stroke(pen * 0.8f))
            } else {
                val to = from + half * 2 + (room - half * 2 - pen) * score.coerceIn(0f, 1f)
                drawLine(colour, Offset(x, from), Offset(x, to), pen, StrokeCap.Round)
                if (!pain.turnedDown) drawCircle(colour, half * 0.8f, Offset(x, to - half / 2))
                if (pain.turnedDown) arrow(x, to, half * 1.3f, pen, colours)
            }
            if (score == null && pain.turnedDown) arrow(x, from + half * 4, half * 1.3f, pen, colours)
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
