package drawwell.desktop.pictures

import androidx.compose.runtime.Composable
import androidx.compose.ui.ImageComposeScene
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.input.pointer.PointerEventType
import androidx.compose.ui.unit.Density
import org.jetbrains.skia.EncodedImageFormat
import org.jetbrains.skia.Image
import java.io.File

/** How large a window is, in dp. */
internal enum class Window(val wide: Int, val tall: Int) {
    Phone(412, 892),

    /** The smallest that is still sold. */
    SmallPhone(360, 640),
    Tablet(800, 1280),
}

/** Draws a screen at the size of a phone, without a display. */
internal object Rendering {
    private const val WHOLE = 2600
    private const val DESK_WIDE = 1180
    private const val DESK_TALL = 860
    private const val DENSITY = 2f
    private const val TURNS = 40

    /** How far down every screen has something that scrolls. */
    private const val SCROLLS = 0.7f
    private const val FRAME = 16_000_000L
    private const val LATER = 2_000_000_000L

    fun write(file: File, image: Image) {
        file.absoluteFile.parentFile.mkdirs()
        file.writeBytes(checkNotNull(image.encodeToData(EncodedImageFormat.PNG)) { "no picture for $file" }.bytes)
    }

    /** `whole` is a screen as long as all there is on it; `scrolled` turns the wheel to the end of what scrolls before the picture is taken. */
    fun image(
        fontScale: Float = 1f,
        scrolled: Boolean = false,
        whole: Boolean = false,
        window: Window = Window.Phone,
        content: @Composable () -> Unit,
    ): Image = image(fontScale, window.wide, if (whole) WHOLE else window.tall, scrolled, content)

    /** The consultant's window, at the size that it opens with. */
    fun desk(fontScale: Float, content: @Composable () -> Unit): Image = image(fontScale, DESK_WIDE, DESK_TALL, scrolled = false, content)

    private fun image(fontScale: Float, across: Int, down: Int, scrolled: Boolean, content: @Composable () -> Unit): Image {
        val wide = (across * DENSITY).toInt()
        val tall = (down * DENSITY).toInt()
        val scene = ImageComposeScene(wide, tall, Density(DENSITY, fontScale), content = content)
        try {
            scene.render(0)
            if (scrolled) scene.scroll(Offset(wide / 2f, tall * SCROLLS))
            return scene.render(LATER)
        } finally {
            scene.close()
        }
    }

    private fun ImageComposeScene.scroll(middle: Offset) = repeat(TURNS) { turn ->
        sendPointerEvent(PointerEventType.Scroll, middle, scrollDelta = Offset(0f, 12f))
        render((turn + 1) * FRAME)
    }
}
