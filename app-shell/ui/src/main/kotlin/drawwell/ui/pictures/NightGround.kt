package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.unit.dp
import drawwell.surface.NightStretch
import drawwell.surface.StretchKind
import drawwell.ui.look.Colours

/** What a night stands on: the time that was chosen for sleep, and how far the night has gone. */
internal object NightGround {
    /** A quieter ground, from the first line of the picture down to its foot; its ends are dotted. */
    fun DrawScope.window(stretches: List<NightStretch>, frame: NightFrame, colours: Colours) {
        val dots = PathEffect.dashPathEffect(floatArrayOf(1.dp.toPx(), 5.dp.toPx()))
        val top = frame.water.top
        stretches.filter { it.kind == StretchKind.WINDOW }.forEach { stretch ->
            val (from, to) = stretch.from * frame.pegs.width to stretch.to * frame.pegs.width
            drawRect(colours.shaft.ground, Offset(from, top), Size(to - from, frame.others.bottom - top))
            frame.run {
                besideTimes {
                    listOf(from, to).forEach { x -> drawLine(colours.page.edge, Offset(x, top), Offset(x, others.bottom), 1.dp.toPx(), pathEffect = dots) }
                }
            }
        }
    }

    /** A thin line down through all of it, and a point at its foot. */
    fun DrawScope.present(at: Float, frame: NightFrame, colours: Colours) {
        val x = (at * frame.pegs.width).coerceIn(1.dp.toPx(), frame.pegs.width - 1.dp.toPx())
        frame.run { besideTimes { drawLine(colours.running.edge, Offset(x, water.top), Offset(x, others.bottom), 1.5.dp.toPx()) } }
        drawCircle(colours.running.edge, 3.dp.toPx(), Offset(x, frame.others.bottom))
    }
}
