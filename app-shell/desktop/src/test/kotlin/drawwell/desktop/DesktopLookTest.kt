package drawwell.desktop

import androidx.compose.ui.graphics.toPixelMap
import androidx.compose.ui.test.SemanticsNodeInteraction
import androidx.compose.ui.test.captureToImage
import drawwell.ui.LookContract

class DesktopLookTest : LookContract() {
    override fun typefaces() = DesktopTypefaces.load()

    override fun SemanticsNodeInteraction.colour() = captureToImage().toPixelMap()[INSIDE, INSIDE]

    private companion object {
        const val INSIDE = 2
    }
}
