package drawwell.ui.pictures

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.ClipOp
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.withTransform
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.NightPicture
import drawwell.surface.Peg
import drawwell.surface.PegState
import drawwell.surface.StretchKind

/** Where the parts of a night lie: the water takes what the others leave. */
internal class NightFrame(night: NightPicture, wide: Float, tall: Float, measurer: TextMeasurer, style: TextStyle, density: Density) {
    val scale = SideScale(night.scale, null, false, measurer, style, topOver = true)
    val words = StripWords(measurer, style, style)
    val times: PegTimes
    val said: Map<Peg, TextLayoutResult>

    /** Over the pegs, and level with their times. */
    val water: Rect

    /** From the top of the highest peg down to the line they stand on. */
    val pegs: Rect
    val sleep: Rect

    /** Beneath sleep: what else fills the time. Without height where there is nothing. */
    val others: Rect

    /** Where the labels of the hours begin. */
    val ticks: Float

    /** Too low a water says nothing, and its labels would lie on each other. */
    val holdsWater: Boolean

    init {
        with(density) {
            val within = wide - if (night.water.isEmpty()) 0f else scale.beside(wide, density)
            said = night.pegs.filter { it.label.isNotEmpty() }.associateWith { measurer.measure(it.label, style.of(it), maxLines = 1) }
            times = PegTimes(said.map { (peg, words) -> PegTimes.Label(peg, Size(words.size.width.toFloat(), words.size.height.toFloat())) }, within, density)
            val line = words.line()
            val other = night.stretches.any { it.kind in OTHERS }
            ticks = tall - line
            others = Rect(0f, ticks - GAP.toPx() - if (other) maxOf(LANE.toPx(), line + 2.dp.toPx()) else 0f, within, ticks - GAP.toPx())
            val slept = maxOf(SLEEP.toPx(), line + 8.dp.toPx())
            val foot = if (other) others.top - 3.dp.toPx() else others.top
            sleep = Rect(0f, foot - slept, within, foot)
            val ground = sleep.top - LINE.toPx()
            pegs = Rect(0f, ground - PEG.toPx(), within, ground)
            val over = if (night.water.isEmpty()) 0f else scale.above(wide)
            water = Rect(0f, over, within, maxOf(over, pegs.top - times.rows * line - GAP.toPx()))
            holdsWater = night.water.isNotEmpty() && water.height >= line * 1.5f
        }
    }

    /** What lies behind the times of the pegs keeps clear of them. */
    fun DrawScope.besideTimes(draw: DrawScope.() -> Unit) {
        val clear = 1.5.dp.toPx()
        val words = times.places.map { times.rect(it, pegs.top).inflate(clear) }
        withTransform({ words.forEach { clipRect(it.left, it.top, it.right, it.bottom, ClipOp.Difference) } }) { draw() }
    }

    private fun TextStyle.of(peg: Peg) = when (peg.state) {
        PegState.SKIPPED -> copy(textDecoration = TextDecoration.LineThrough)
        else -> this
    }

    companion object {
        val OTHERS = setOf(StretchKind.BUSY, StretchKind.WANTED, StretchKind.FEED)
        private val PEG = 32.dp
        private val SLEEP = 28.dp
        private val LANE = 18.dp
        private val LINE = 3.dp
        private val GAP = 4.dp
    }
}
