package drawwell.desktop

import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder

class LookAroundTest {
    @get:Rule
    val temporary = TemporaryFolder()

    @Test
    fun showsTheInventedFamilyAtItsOwnMoment() {
        val record = LookAroundRecord.openIn(temporary.root)
        val now = record.core.here(record.now())
        assertTrue(now is Screen.Ready)
        val yesterday = record.core.show(Place.Day(1u), record.now()) as Screen.Day
        assertTrue(yesterday.day.entries.isNotEmpty())
        (record.core as AutoCloseable).close()
    }
}
