package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick
import kotlin.math.PI
import kotlin.math.abs
import kotlin.math.cos
import kotlin.math.sin

/**
 * Where everything on a dial lies: three quarters round, open below, with its labels outside the rim, so that no hand
 * hides one. A label that would make the dial too small, or touch another, is left out.
 */
internal class DialFace(wide: Float, ticks: List<Label>, density: Density) {
    /** A tick, and how large its words are. */
    class Label(val tick: Tick, val size: Size)

    private val out = with(density) { OUT.toPx() }
    private val between = with(density) { BETWEEN.toPx() }

    /** Those that have room. */
    val labels: List<Label>
    val radius: Float
    val middle: Offset
    val size: Size

    init {
        val roomy = ticks.filter { it.size.width > 0f }.filter { it.most(wide) >= wide * LEAST }
        radius = roomy.minOfOrNull { it.most(wide) }?.coerceAtMost(wide / 2 - out) ?: (wide / 2 - out)
        val above = roomy.maxOfOrNull { it.size.height / 2 - sin(angle(it.tick.at)) * (radius + out + it.reach()) } ?: 0f
        middle = Offset(wide / 2, maxOf(above, radius + out))
        labels = apart(roomy)
        val foot = labels.maxOfOrNull { place(it).bottom } ?: 0f
        size = Size(wide, maxOf(foot, middle.y + radius * sin(angle(1f)) + out))
    }

    /** Thick enough to be read as a column that was bent round. */
    val band: Float = (radius * BAND).coerceAtLeast(with(density) { 12.dp.toPx() })

    /** The inner edge of the rim. */
    val within: Float = radius - band

    /** In radians, clockwise from the right. */
    fun angle(at: Float): Float = ((FROM + SWEEP * at) * PI / 180).toFloat()

    /** In degrees, as arcs are drawn. */
    fun degrees(at: Float): Float = FROM + SWEEP * at

    fun point(at: Float, radius: Float): Offset = angle(at).let { Offset(middle.x + radius * cos(it), middle.y + radius * sin(it)) }

    fun circle(radius: Float): Rect = Rect(middle, radius)

    fun place(label: Label): Rect {
        val centre = point(label.tick.at, radius + out + label.reach())
        return Rect(Offset(centre.x - label.size.width / 2, centre.y - label.size.height / 2), label.size)
    }

    /** From its middle to its edge, towards the dial's own middle. */
    private fun Label.reach(): Float =
        abs(cos(angle(tick.at))) * size.width / 2 + abs(sin(angle(tick.at))) * size.height / 2

    /** How large the dial may be for this label to have room beside it. */
    private fun Label.most(wide: Float): Float {
        val aside = abs(cos(angle(tick.at)))
        return if (aside < UPRIGHT) wide else (wide - size.width) / 2 / aside - out - reach()
    }

    /** Both ends first, then what has room between them. */
    private fun apart(labels: List<Label>): List<Label> {
        val kept = mutableListOf<Label>()
        (listOfNotNull(labels.minByOrNull { it.tick.at }, labels.maxByOrNull { it.tick.at }) + labels).distinct().forEach { label ->
            val place = place(label).inflate(between)
            if (kept.none { place(it).overlaps(place) }) kept += label
        }
        return kept
    }

    companion object {
        private const val FROM = 135f
        const val SWEEP = 270f
        private const val BAND = 0.15f

        /** The least of the picture's width that the dial's own radius may be. */
        private const val LEAST = 0.31f
        private const val UPRIGHT = 0.05f

        /** From the rim out to the labels; the ticks stand there. */
        val OUT = 12.dp
        private val BETWEEN = 4.dp
    }
}
