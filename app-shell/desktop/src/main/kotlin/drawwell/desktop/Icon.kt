package drawwell.desktop

import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.ui.ImageComposeScene
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.toAwtImage
import androidx.compose.ui.graphics.toComposeImageBitmap
import androidx.compose.ui.unit.Density
import drawwell.ui.pictures.WellMark
import java.awt.Image

/** The mark as a picture for the window and the tray. */
object Icon {
    private const val SIDE = 256

    fun picture(): Image {
        val scene = ImageComposeScene(SIDE, SIDE, Density(1f)) { WellMark(Modifier.fillMaxSize()) }
        return try {
            scene.render().toComposeImageBitmap().toAwtImage()
        } finally {
            scene.close()
        }
    }
}
