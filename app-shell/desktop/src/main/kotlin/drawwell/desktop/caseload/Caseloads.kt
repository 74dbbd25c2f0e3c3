package drawwell.desktop.caseload

import drawwell.desktop.DataFolder
import drawwell.desktop.WallClock
import drawwell.surface.Desk
import drawwell.surface.Opening
import drawwell.surface.deskRecord
import drawwell.surface.platformKey
import drawwell.surface.uniffiEnsureInitialized
import drawwell.ui.caseload.OpenCaseload
import java.util.Locale

/** Opens the consultant's caseload. */
class Caseloads(private val folder: DataFolder, private val clock: WallClock) {
    fun open(): OpenCaseload {
        // A library of another build is found out here, before anything is read as what it is not.
        uniffiEnsureInitialized()
        val opening = Opening(folder.device(), Locale.getDefault(Locale.Category.FORMAT).toLanguageTag(), lookAround = false)
        val key = platformKey(deskRecord(folder.path))
        return OpenCaseload(Desk.open(folder.path, opening, clock.now(), key), clock::now)
    }
}
