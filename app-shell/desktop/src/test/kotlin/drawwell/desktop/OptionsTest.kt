package drawwell.desktop

import org.junit.Assert.assertEquals
import org.junit.Assert.assertThrows
import org.junit.Test
import java.io.File
import java.time.Instant

class OptionsTest {
    @Test
    fun areReadByTheirNames() {
        val options = Options.read(arrayOf("--record", "a", "--time", "2026-03-02T03:10:00+01:00[Europe/Berlin]", "--only", "supply", "--measure", "--contrast"))
        assertEquals(File("a"), options.record)
        assertEquals(Instant.parse("2026-03-02T02:10:00Z"), options.time?.toInstant())
        assertEquals("Europe/Berlin", options.time?.zone?.id)
        assertEquals("supply", options.only)
        assertEquals(true, options.measure)
        assertEquals(true, options.contrast)
        assertEquals(Options(), Options.read(emptyArray()))
    }

    @Test
    fun aMomentWithoutAZoneIsTakenInTheZoneOfTheDesk() {
        assertEquals(Instant.parse("2026-03-02T02:10:00Z"), Moments.read("2026-03-02T03:10:00+01:00\n").toInstant())
    }

    @Test
    fun anUnknownOneIsRefused() {
        assertThrows(IllegalArgumentException::class.java) { Options.read(arrayOf("--sideways")) }
        assertThrows(IllegalArgumentException::class.java) { Options.read(arrayOf("--record")) }
    }
}
