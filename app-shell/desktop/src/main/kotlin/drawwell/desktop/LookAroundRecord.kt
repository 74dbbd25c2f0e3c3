package drawwell.desktop

import drawwell.surface.Drawwell
import drawwell.surface.Event
import drawwell.surface.Opening
import drawwell.surface.Place
import drawwell.ui.OpenRecord
import java.io.File
import java.nio.file.Files
import java.util.Locale

/** The invented family, brought into a fresh record that is gone with the program. */
object LookAroundRecord {
    fun open(): OpenRecord {
        val folder = Files.createTempDirectory("drawwell-look-around").toFile()
        Runtime.getRuntime().addShutdownHook(Thread { folder.deleteRecursively() })
        return openIn(folder)
    }

    fun openIn(folder: File): OpenRecord {
        val clock = WallClock(Moments.read(bundled("family.clock").decodeToString()))
        val family = folder.resolve("family.jsonl").apply { writeBytes(bundled("family.jsonl")) }
        val opening = Opening("lookaround", Locale.getDefault(Locale.Category.FORMAT).toLanguageTag(), lookAround = true)
        val core = Drawwell.open(folder.resolve("record.drawwell").path, opening, clock.now())
        core.importFile(family.path, clock.now())
        core.update(Event.Go(Place.Now), clock.now())
        return OpenRecord(core, clock::now)
    }

    internal fun bundled(name: String): ByteArray =
        checkNotNull(javaClass.getResourceAsStream("/drawwell/demo/$name")) { "the invented family is not bundled" }
            .use { it.readBytes() }
}
