package drawwell.desktop.pictures

import androidx.compose.runtime.Composable
import androidx.compose.ui.ImageComposeScene
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.input.pointer.PointerEventType
import androidx.compose.ui.unit.Density
import org.jetbrains.skia.EncodedImageFormat
import java.io.File

/** Draws a screen into a picture file, at the size of a phone, without a display. */
object Rendering {
    private const val WIDE = 412
    private const val TALL = 892
    private const val DENSITY = 2f

    /** `scrolled` turns the wheel to the end of what scrolls before the picture is taken. */
    fun write(file: File, fontScale: Float = 1f, scrolled: Boolean = false, content: @Composable () -> Unit) {
        val wide = (WIDE * DENSITY).toInt()
        val tall = (TALL * DENSITY).toInt()
        val scene = ImageComposeScene(wide, tall, Density(DENSITY, fontScale), content = content)
        try {
            scene.render(0)
            if (scrolled) {
                val middle = Offset(wide / 2f, tall / 2f)
                repeat(40) { turn ->
                    scene.sendPointerEvent(PointerEventType.Scroll, middle, scrollDelta = Offset(0f, 12f))
                    scene.render(turn * 16_000_000L)
                }
            }
            scene.render(1_000_000_000L)
            val image = scene.render(2_000_000_000L)
            file.parentFile.mkdirs()
            file.writeBytes(checkNotNull(image.encodeToData(EncodedImageFormat.PNG)).bytes)
        } finally {
            scene.close()
        }
    }
}
