package drawwell.ui

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.unit.Density
import drawwell.surface.Peg
import drawwell.surface.PegState
import drawwell.ui.pictures.PegTimes
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** However close the pegs stand and however large the type: no time touches another, none lies outside, and the next one's is said. */
class PegTimesTest {
    private class Case(val wide: Float, val type: Float, val apart: Float, val next: Int) {
        private val pegs = generateSequence(0f) { it + apart }.takeWhile { it <= 1f }.mapIndexed { place, at ->
            Peg(at, at + 0.02f, if (place == next) PegState.NEXT else STATES[place % STATES.size], "$place")
        }.toList()
        val times = PegTimes(pegs.map { PegTimes.Label(it, Size(36f * type, 16f * type)) }, wide, Density(1f, type))
        val rects = times.places.map { it to times.rect(it, FOOT) }
        val all = pegs.size

        override fun toString() = "$all pegs on $wide at $type, the next ${next}th"
    }

    private val cases = listOf(240f, 320f, 380f, 528f).flatMap { wide ->
        listOf(1f, 1.5f, 2f).flatMap { type ->
            listOf(0.02f, 0.05f, 0.08f, 0.11f, 0.2f, 0.35f).flatMap { apart -> listOf(0, 1, 2).map { Case(wide, type, apart, it) } }
        }
    }

    @Test
    fun noTimeTouchesAnother() = cases.forEach { case ->
        case.rects.forEachIndexed { index, (_, one) -> case.rects.drop(index + 1).forEach { (_, other) -> assertTrue("$case", !one.overlaps(other)) } }
    }

    @Test
    fun noLineUpToATimeGoesThroughAnother() = cases.forEach { case ->
        case.rects.filter { it.first.row > 0 }.forEach { (place, rect) ->
            val line = Rect(place.x - 0.5f, rect.bottom, place.x + 0.5f, FOOT)
            case.rects.filter { it.first !== place }.forEach { (_, other) -> assertTrue("$case", !line.overlaps(other)) }
        }
    }

    @Test
    fun noneLiesOutside() = cases.forEach { case ->
        case.rects.forEach { (_, rect) -> assertTrue("$case: $rect", rect.left >= 0f && rect.right <= case.wide && rect.top >= FOOT - case.times.rows * rect.height) }
    }

    @Test
    fun theNextOneIsSaidRightOverItsPeg() = cases.forEach { case ->
        val next = case.times.places.filter { it.label.peg.state == PegState.NEXT }
        assertEquals("$case", listOf(0), next.map { it.row })
        val place = next.single()
        assertTrue("$case", place.x in place.left..place.right)
    }

    @Test
    fun whereThereIsRoomAllAreSaidInOneRow() {
        val case = Case(380f, 1f, 0.2f, 1)
        assertEquals(case.all, case.rects.size)
        assertEquals(1, case.times.rows)
    }

    private companion object {
        const val FOOT = 200f
        val STATES = listOf(PegState.DONE, PegState.PLANNED, PegState.FIXED, PegState.FEED, PegState.SKIPPED)
    }
}
