package drawwell.desktop

import drawwell.surface.Drawwell
import drawwell.surface.Opening
import drawwell.surface.makeFolder
import drawwell.surface.platformKey
import drawwell.surface.uniffiEnsureInitialized
import drawwell.ui.OpenRecord
import java.io.File
import java.util.Locale

/** Opens the person's own record. */
class Records(private val record: File, private val device: () -> String, private val clock: WallClock) {
    fun open(): OpenRecord {
        // A library of another build is found out here, before anything is read as what it is not.
        uniffiEnsureInitialized()
        makeFolder(record.absoluteFile.parent)
        val opening = Opening(device(), Locale.getDefault(Locale.Category.FORMAT).toLanguageTag(), lookAround = false)
        return OpenRecord(Drawwell.open(record.path, opening, clock.now(), platformKey(record.path)), clock::now)
    }
}
