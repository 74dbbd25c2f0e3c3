package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.Peg
import drawwell.surface.PegState
import drawwell.ui.look.Colours

/** Sessions as pegs on the line of the night, each state with a shape of its own; over them their times. */
internal object NightPegs {
    fun DrawScope.pegs(pegs: List<Peg>, frame: NightFrame, colours: Colours) {
        val ground = frame.pegs.bottom
        drawLine(colours.page.edge, Offset(0f, ground), Offset(frame.pegs.width, ground), 1.5.dp.toPx())
        times(frame, colours)
        // The next one over all others.
        pegs.sortedBy { it.state == PegState.NEXT }.forEach { peg ->
            val x = (peg.at * frame.pegs.width).coerceIn(LARGE.toPx(), frame.pegs.width - LARGE.toPx())
            lasts(peg, x, frame, colours)
            shape(peg.state, x, frame.pegs.top, ground, colours)
        }
    }

    /** The part of the line that it takes. */
    private fun DrawScope.lasts(peg: Peg, x: Float, frame: NightFrame, colours: Colours) {
        if (peg.state == PegState.SKIPPED) return
        val to = (peg.until * frame.pegs.width).coerceIn(x, frame.pegs.width)
        drawLine(colours.ink(peg.state), Offset(x, frame.pegs.bottom), Offset(to, frame.pegs.bottom), 4.dp.toPx(), StrokeCap.Round)
    }

    private fun DrawScope.shape(state: PegState, x: Float, top: Float, ground: Float, colours: Colours) {
        val ink = colours.ink(state)
        val head = Offset(x, top + LARGE.toPx())
        val small = SMALL.toPx()
        val pen = Stroke(2.dp.toPx(), cap = StrokeCap.Round)
        fun stem(wide: Float, from: Float = head.y, dashes: PathEffect? = null) =
            drawLine(ink, Offset(x, from), Offset(x, ground), wide, StrokeCap.Round, dashes)
        when (state) {
            PegState.DONE -> {
                stem(2.dp.toPx())
                drawCircle(ink, small, head)
            }
            PegState.NEXT -> {
                stem(4.dp.toPx())
                drawCircle(ink, LARGE.toPx(), head)
            }
            PegState.PLANNED -> {
                stem(2.dp.toPx(), head.y + small)
                hollow(head, small, ink, colours)
            }
            PegState.FIXED -> {
                stem(2.dp.toPx())
                drawRect(colours.page.ground, Offset(x - small, head.y - small), Size(2 * small, 2 * small))
                drawRect(ink, Offset(x - small, head.y - small), Size(2 * small, 2 * small), style = pen)
                drawLine(ink, Offset(x - small, ground), Offset(x + small, ground), 4.dp.toPx(), StrokeCap.Round)
            }
            PegState.FEED -> hollow(Offset(x, ground - small - 3.dp.toPx()), small + 1.dp.toPx(), ink, colours)
            PegState.SKIPPED -> {
                stem(1.5.dp.toPx(), head.y + small, PathEffect.dashPathEffect(floatArrayOf(2.dp.toPx(), 4.dp.toPx())))
                hollow(head, small, ink, colours)
                val reach = small * OVER
                drawLine(ink, Offset(x - reach, head.y + reach), Offset(x + reach, head.y - reach), pen.width, StrokeCap.Round)
            }
        }
    }

    private fun DrawScope.hollow(middle: Offset, radius: Float, ink: Color, colours: Colours) {
        drawCircle(colours.page.ground, radius, middle)
        drawCircle(ink, radius, middle, style = Stroke(2.dp.toPx()))
    }

    /** A thin line leads up to one that stands a row higher. */
    private fun DrawScope.times(frame: NightFrame, colours: Colours) = frame.times.places.forEach { place ->
        val rect = frame.times.rect(place, frame.pegs.top)
        if (place.row > 0) drawLine(colours.page.edge, Offset(place.x, rect.bottom), Offset(place.x, frame.pegs.top + LARGE.toPx()), 1.dp.toPx())
        val peg = place.label.peg
        val ink = if (peg.state == PegState.NEXT) colours.running.ink else colours.page.soft
        drawText(frame.said.getValue(peg), ink, rect.topLeft)
    }

    private fun Colours.ink(state: PegState) = when (state) {
        PegState.NEXT -> running.edge
        PegState.SKIPPED -> page.edge
        else -> bars.ink
    }

    /** How far the stroke through one that was left out goes over its head. */
    private const val OVER = 1.5f
    private val SMALL = 5.dp
    private val LARGE = 8.dp
}
