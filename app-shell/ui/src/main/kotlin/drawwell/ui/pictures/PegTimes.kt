package drawwell.ui.pictures

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Peg
import drawwell.surface.PegState

/**
 * The times over the pegs. The next one's always stands, right over its peg; one that would touch another stands a row
 * higher, where no line up to it goes through another; one that has no room there either is left out.
 */
internal class PegTimes(labels: List<Label>, wide: Float, density: Density) {
    /** A peg, and how large its time is. */
    class Label(val peg: Peg, val size: Size)

    /** Where one stands: from its left edge on, in the row next to the pegs (0) or the one over it. */
    class Place(val label: Label, val x: Float, val left: Float, val row: Int) {
        val right get() = left + label.size.width
    }

    private val between = with(density) { 6.dp.toPx() }

    /** Those that have room, in order of time. */
    val places: List<Place>

    val rows: Int get() = (places.maxOfOrNull { it.row } ?: -1) + 1

    init {
        val stand = mutableListOf<Place>()
        labels.sortedWith(compareBy({ ORDER.indexOf(it.peg.state) }, { it.peg.at })).forEach { label ->
            val x = label.peg.at * wide
            val left = (x - label.size.width / 2).coerceIn(0f, (wide - label.size.width).coerceAtLeast(0f))
            (0 until ROWS).map { Place(label, x, left, it) }.firstOrNull { place -> stand.none { it.meets(place) } }?.let { stand += it }
        }
        places = stand.sortedBy { it.label.peg.at }
    }

    private fun Place.meets(other: Place): Boolean =
        if (row == other.row) left - between < other.right && other.left < right + between
        else if (row < other.row) crossedBy(other) else other.crossedBy(this)

    /** Whether the line up to a higher one goes through it. */
    private fun Place.crossedBy(higher: Place) = higher.x > left - between / 2 && higher.x < right + between / 2

    fun rect(place: Place, foot: Float): Rect {
        val top = foot - (place.row + 1) * place.label.size.height
        return Rect(place.left, top, place.right, top + place.label.size.height)
    }

    private companion object {
        const val ROWS = 2

        /** Who is served first. */
        val ORDER = listOf(PegState.NEXT, PegState.FIXED, PegState.PLANNED, PegState.FEED, PegState.DONE, PegState.SKIPPED)
    }
}
