package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.unit.dp
import drawwell.surface.Band
import drawwell.surface.PlotBand
import drawwell.surface.PlotStretch
import drawwell.ui.look.Colours
import drawwell.ui.pictures.Ranges.range
import drawwell.ui.pictures.StripBands.bands

/** What a plot stands on: ranges across it, stretches along it. */
internal object PlotGround {
    fun DrawScope.ranges(bands: List<PlotBand>, area: Rect, colours: Colours) = bands.forEachIndexed { place, band ->
        range(area.between(band), place, colours)
    }

    /** Their edges, over what is drawn on them. */
    fun DrawScope.edges(bands: List<PlotBand>, area: Rect, colours: Colours) = bands.forEach { band ->
        val between = area.between(band)
        listOf(between.top, between.bottom).filter { it < area.bottom }.forEach { y ->
            drawLine(colours.plain.edge, Offset(area.left, y), Offset(area.right, y), 2.dp.toPx())
        }
    }

    /** Each by its texture at the head, and a line down from where it begins. */
    fun DrawScope.stretches(stretches: List<PlotStretch>, head: Rect, area: Rect, colours: Colours) {
        if (stretches.isEmpty()) return
        bands(stretches.map { Band(it.from, it.to, it.phase, it.label) }, head, colours, null)
        val dots = PathEffect.dashPathEffect(floatArrayOf(2.dp.toPx(), 5.dp.toPx()))
        stretches.filter { it.from > 0f }.forEach { stretch ->
            val x = area.left + stretch.from * area.width
            drawLine(colours.page.edge, Offset(x, head.bottom), Offset(x, area.bottom), 1.dp.toPx(), pathEffect = dots)
        }
    }

    private fun Rect.between(band: PlotBand) = Rect(left, bottom - band.high * height, right, bottom - band.low * height)
}
