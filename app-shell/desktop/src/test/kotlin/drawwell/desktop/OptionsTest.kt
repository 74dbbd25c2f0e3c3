package drawwell.desktop

import org.junit.Assert.assertEquals
import org.junit.Assert.assertThrows
import org.junit.Test
import java.io.File
import java.time.Instant

class OptionsTest {
    @Test
    fun areReadByTheirNames() {
        val options = Options.read(arrayOf("--record", "a", "--time", "2026-03-02T03:10:00+01:00[Europe/Berlin]", "--only", "supply,now-ready.light", "--measure", "--contrast", "b"))
        assertEquals(File("a"), options.record)
        assertEquals(Instant.parse("2026-03-02T02:10:00Z"), options.time?.toInstant())
        assertEquals("Europe/Berlin", options.time?.zone?.id)
        assertEquals(listOf("supply", "now-ready.light"), options.only)
        assertEquals(File("b"), options.file)
        assertEquals(true, options.measure)
        assertEquals(true, options.contrast)
        assertEquals(Options(), Options.read(emptyArray()))
    }

    @Test
    fun aFileThatIsOpenedIsNotTakenForTheFolderOfTheCaseload() {
        assertEquals(Options(file = File("a"), caseload = true), Options.read(arrayOf("a", "--caseload")))
        assertEquals(Options(caseload = true, caseloadFolder = File("a")), Options.read(arrayOf("--caseload", "a")))
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
