package drawwell.desktop

import java.awt.GraphicsEnvironment
import java.awt.Toolkit

/** Whether a window can be opened here. */
object Display {
    /** How the program ends where none can be (sysexits.h: EX_UNAVAILABLE). */
    const val UNAVAILABLE = 69

    /** For the log of whoever started it: there is nobody to show a sentence of the core's to. */
    const val NONE = "Drawwell: no window can be opened here."

    /** Java says so only by throwing, and some of what it throws is no exception: no library, no server. */
    fun opens(): Boolean = try {
        Toolkit.getDefaultToolkit().screenSize
        !GraphicsEnvironment.isHeadless()
    } catch (_: Exception) {
        false
    } catch (_: LinkageError) {
        false
    } catch (_: java.awt.AWTError) {
        false
    }
}
