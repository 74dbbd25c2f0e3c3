package drawwell.ui

import androidx.compose.ui.geometry.Size
import androidx.compose.ui.unit.Density
import drawwell.surface.Tick
import drawwell.ui.pictures.DialFace
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** At every width, in every type and with any number of ticks a dial is large, and its labels stand apart and within it. */
class DialFaceTest {
    private class Case(val wide: Float, val type: Float, val ticks: Int) {
        val labels = (0..ticks).map { DialFace.Label(Tick(it / ticks.toFloat(), "$it"), Size(DIGITS * 8f * type, 16f * type)) }
        val face = DialFace(wide, labels, Density(1f, type))

        override fun toString() = "$ticks ticks on $wide at $type"
    }

    private val cases = (200..360 step 20).flatMap { wide ->
        listOf(1f, 1.3f, 1.6f, 2f).flatMap { type -> listOf(2, 4, 5, 8, 9, 10, 20, 40).map { Case(wide.toFloat(), type, it) } }
    }

    @Test
    fun noLabelTouchesAnother() = cases.forEach { case ->
        val places = case.face.labels.map { case.face.place(it) }
        places.forEachIndexed { index, one -> places.drop(index + 1).forEach { assertTrue("$case", !one.overlaps(it)) } }
    }

    @Test
    fun everyLabelLiesWithinThePictureAndOutsideTheRim() = cases.forEach { case ->
        val face = case.face
        face.labels.map { face.place(it) }.forEach { place ->
            assertTrue("$case: $place", place.left >= -0.5f && place.right <= case.wide + 0.5f)
            assertTrue("$case: $place", place.top >= -0.5f && place.bottom <= face.size.height + 0.5f)
            val nearest = Size(
                maxOf(place.left - face.middle.x, face.middle.x - place.right, 0f),
                maxOf(place.top - face.middle.y, face.middle.y - place.bottom, 0f),
            )
            assertTrue("$case: $place", nearest.width * nearest.width + nearest.height * nearest.height > face.radius * face.radius)
        }
    }

    @Test
    fun theDialStaysLargeAndItsEndsAreSaid() = cases.forEach { case ->
        assertTrue("$case", case.face.radius >= case.wide * 0.3f)
        assertEquals("$case", listOf(0f, 1f), case.face.labels.map { it.tick.at }.sorted().let { listOf(it.first(), it.last()) })
    }

    @Test
    fun withoutTicksItFillsItsPicture() {
        val face = DialFace(300f, emptyList(), Density(1f))
        assertTrue(face.radius > 130f)
        assertTrue(face.labels.isEmpty())
    }

    private companion object {
        const val DIGITS = 3
    }
}
