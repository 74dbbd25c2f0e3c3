package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.surface.PlotColumn
import drawwell.ui.look.Colours

/** A trace: between lowest and highest at each place, joined to one shape, and open where nothing was seen. */
internal object PlotTrace {
    fun DrawScope.trace(columns: List<PlotColumn>, area: Rect, colours: Colours) {
        unbroken(columns).map { joined(it, TOGETHER.toPx() / area.width) }.forEach { run ->
            val shape = Path().apply {
                run.forEachIndexed { place, column -> area.at(column.at, column.high).let { if (place == 0) moveTo(it.x, it.y) else lineTo(it.x, it.y) } }
                run.reversed().forEach { column -> area.at(column.at, column.low).let { lineTo(it.x, it.y) } }
                close()
            }
            drawPath(shape, colours.ribbon)
            drawPath(shape, colours.bars.edge, style = Stroke(1.5.dp.toPx(), cap = StrokeCap.Round, join = StrokeJoin.Round))
        }
    }

    /** The columns stand evenly; where one of them is not there, nothing is joined. */
    private fun unbroken(columns: List<PlotColumn>): List<List<PlotColumn>> {
        if (columns.size < 2) return listOf(columns).filter { it.isNotEmpty() }
        val steps = columns.zipWithNext { one, next -> next.at - one.at }
        val gap = steps.sorted()[steps.size / 2] * MISSING
        val runs = mutableListOf(mutableListOf(columns.first()))
        columns.drop(1).zip(steps).forEach { (column, step) ->
            if (step > gap) runs += mutableListOf(column) else runs.last() += column
        }
        return runs
    }

    /** What lies closer than can be told apart is one, or the cycles of a long trace would fill it with ink. */
    private fun joined(columns: List<PlotColumn>, within: Float): List<PlotColumn> {
        val together = columns.groupBy { (it.at / within).toInt() }.values.map { near ->
            PlotColumn(near.first().at, near.minOf { it.low }, near.maxOf { it.high })
        }
        return together + together.last().copy(at = columns.last().at)
    }

    private fun Rect.at(along: Float, height: Float) = Offset(left + along * width, bottom - height * this.height)

    private const val MISSING = 1.5f
    private val TOGETHER = 4.dp
}
