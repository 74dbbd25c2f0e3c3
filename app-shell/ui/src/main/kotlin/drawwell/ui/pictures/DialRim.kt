package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipPath
import androidx.compose.ui.graphics.drawscope.rotate
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.DialArc
import drawwell.surface.Tick
import drawwell.ui.look.Colours

/** The rim of a dial: a shaft bent round, with the ranges in it and the ticks outside it. */
internal object DialRim {
    fun DrawScope.rim(face: DialFace, arcs: List<DialArc>, colours: Colours) {
        val whole = face.ring(0f, 1f)
        drawPath(whole, colours.shaft.ground)
        arcs.forEachIndexed { place, arc -> range(face, arc, place, colours) }
        drawPath(whole, colours.shaft.edge, style = Stroke(WALL.toPx(), cap = StrokeCap.Round))
    }

    /** Each tick that is there, and the words of those that have room. */
    fun DrawScope.ticks(face: DialFace, ticks: List<Tick>, measurer: TextMeasurer, style: TextStyle, colours: Colours) {
        val labelled = face.labels.map { it.tick }.toSet()
        ticks.forEach { tick ->
            val long = (if (tick in labelled) LONG else SHORT).toPx()
            val from = face.point(tick.at, face.radius + 2.dp.toPx())
            drawLine(colours.page.edge, from, face.point(tick.at, face.radius + long), 1.5.dp.toPx(), StrokeCap.Round)
        }
        face.labels.forEach { drawText(measurer.measure(it.tick.label, style), topLeft = face.place(it).topLeft) }
    }

    private fun DrawScope.range(face: DialFace, arc: DialArc, place: Int, colours: Colours) {
        val ring = face.ring(arc.from, arc.to)
        if (Ranges.filled(place)) drawPath(ring, colours.plain.ground)
        clipPath(ring) { lines(face, arc, place, colours) }
        listOf(arc.from, arc.to).forEach { end ->
            drawLine(colours.plain.edge, face.point(end, face.within), face.point(end, face.radius), 2.5.dp.toPx())
        }
    }

    /** Slanting as a range does in any picture, each in its own place round the dial. */
    private fun DrawScope.lines(face: DialFace, arc: DialArc, place: Int, colours: Colours) {
        val apart = Ranges.APART.toPx() / face.radius * HALF_TURN
        var at = face.degrees(arc.from)
        while (at < face.degrees(arc.to) + 2 * apart) {
            rotate(at, face.middle) {
                val slant = face.band * Ranges.slant(place)
                val inner = Offset(face.middle.x + face.within, face.middle.y)
                drawLine(colours.plain.edge, inner, Offset(face.middle.x + face.radius, face.middle.y - slant), Ranges.HAIR.toPx())
            }
            at += apart
        }
    }

    private fun DialFace.ring(from: Float, to: Float) = Path().apply {
        val sweep = degrees(to) - degrees(from)
        arcTo(circle(radius), degrees(from), sweep, forceMoveTo = true)
        arcTo(circle(within), degrees(to), -sweep, forceMoveTo = false)
        close()
    }

    private val WALL = 1.5.dp
    private val LONG = 9.dp
    private val SHORT = 5.dp
    private const val HALF_TURN = 57.29578f
}
