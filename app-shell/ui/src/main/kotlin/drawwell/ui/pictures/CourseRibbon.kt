package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.ClipOp
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.withTransform
import androidx.compose.ui.unit.dp
import drawwell.surface.RibbonPoint
import drawwell.ui.look.Colours

/** The water line as it goes through the weeks, within the range it may lie in; both are broken where the level changed; dashed where it is drawn on beyond what was seen. */
internal object CourseRibbon {
    fun DrawScope.ribbon(points: List<RibbonPoint>, broken: List<Rect>, area: Rect, colours: Colours, dashed: Boolean = false) {
        if (points.size < 2) return
        withTransform({ broken.forEach { clipRect(it.left, it.top, it.right, it.bottom, ClipOp.Difference) } }) {
            drawPath(range(points, area), colours.ribbon)
            listOf<(RibbonPoint) -> Float>({ it.low }, { it.high }).forEach { edge ->
                drawPath(line(points, area, edge), colours.bars.soft, style = pen(1f))
            }
            drawPath(line(points, area) { it.middle }, colours.bars.ink, style = pen(3f, dashed))
        }
    }

    private fun range(points: List<RibbonPoint>, area: Rect) = line(points, area) { it.high }.apply {
        points.reversed().forEach { point -> area.at(point.at, point.low).let { lineTo(it.x, it.y) } }
        close()
    }

    private fun line(points: List<RibbonPoint>, area: Rect, height: (RibbonPoint) -> Float) = Path().apply {
        points.forEachIndexed { index, point ->
            val place = area.at(point.at, height(point))
            if (index == 0) moveTo(place.x, place.y) else lineTo(place.x, place.y)
        }
    }

    private fun Rect.at(along: Float, height: Float) = Offset(left + along * width, bottom - height * this.height)

    private fun DrawScope.pen(wide: Float, dashed: Boolean = false) = Stroke(
        wide.dp.toPx(),
        cap = StrokeCap.Round,
        join = StrokeJoin.Round,
        pathEffect = if (dashed) PathEffect.dashPathEffect(floatArrayOf(6.dp.toPx(), 8.dp.toPx())) else null,
    )
}
