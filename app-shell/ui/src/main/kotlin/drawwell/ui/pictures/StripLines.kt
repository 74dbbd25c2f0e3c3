package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipRect
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.Notch
import drawwell.surface.StepPoint
import drawwell.ui.look.Colours

/** What was set, as step lines, and the letdowns, as notches from above. */
internal object StripLines {
    /** From each point on, its height. The thick line is the vacuum, the thin broken one the cycles. */
    fun DrawScope.steps(points: List<StepPoint>, area: Rect, end: Float, colours: Colours, thick: Dp, broken: Boolean) {
        if (points.isEmpty()) return
        val inset = if (area.height > 40.dp.toPx()) 8.dp.toPx() else 3.dp.toPx()
        fun x(point: StepPoint) = area.left + point.at * area.width
        val ground = area.bottom - area.height * StripBands.FILL
        fun y(point: StepPoint) = ground - inset - point.height * (ground - area.top - 2 * inset)
        val line = Path().apply {
            moveTo(x(points.first()), y(points.first()))
            points.zipWithNext { before, point ->
                lineTo(x(point), y(before))
                lineTo(x(point), y(point))
            }
            lineTo(maxOf(end, x(points.last())), y(points.last()))
        }
        val dashes = if (broken) PathEffect.dashPathEffect(floatArrayOf(4.dp.toPx(), 5.dp.toPx())) else null
        val halo = Stroke((thick + 3.dp).toPx(), cap = StrokeCap.Round, join = StrokeJoin.Round)
        clipRect(area.left, 0f, end.coerceAtLeast(area.left), size.height) {
            drawPath(line, colours.shaft.ground, style = halo)
            drawPath(line, colours.shaft.edge, style = Stroke(thick.toPx(), cap = StrokeCap.Round, join = StrokeJoin.Round, pathEffect = dashes))
        }
    }

    fun DrawScope.notches(notches: List<Notch>, area: Rect, colours: Colours) {
        notches.forEach { notch ->
            val x = (area.left + notch.at * area.width).coerceIn(area.left + 5.dp.toPx(), area.right - 5.dp.toPx())
            val wide = if (area.height > 40.dp.toPx()) 6.dp.toPx() else 4.dp.toPx()
            val wedge = Path().apply {
                moveTo(x - wide, 0f)
                lineTo(x + wide, 0f)
                lineTo(x, area.top + wide)
                close()
            }
            drawLine(colours.shaft.ground, Offset(x, area.top), Offset(x, area.bottom), 4.dp.toPx())
            drawLine(colours.shaft.edge, Offset(x, area.top), Offset(x, area.bottom), 1.5.dp.toPx())
            drawPath(wedge, colours.shaft.edge)
        }
    }
}
