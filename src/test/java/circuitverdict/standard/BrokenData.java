package circuitverdict.standard;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;

/**
 * The real data folder with one file changed, read by the real loader: its classes are loaded anew,
 * so that they see the changed file in place of the one on the class path.
 */
final class BrokenData extends ClassLoader {
  private final String path;
  private final String text;

  private BrokenData(String path, String text) {
    super(BrokenData.class.getClassLoader());
    this.path = "editions/" + path;
    this.text = text;
  }

  /** A file of the data folder as it is. */
  static String file(String path) {
    try (InputStream in = BrokenData.class.getResourceAsStream("/editions/" + path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What the loader says of the data with this file changed to this text; null if it says nothing.
   */
  static String refusal(String path, String text) {
    try {
      Class<?> loader = new BrokenData(path, text).loadClass(EditionLoader.class.getName());
      loader.getMethod("load").invoke(null);
      return null;
    } catch (InvocationTargetException e) {
      StringBuilder all = new StringBuilder();
      for (Throwable t = e.getCause(); t != null; t = t.getCause()) {
        all.append(t.getMessage()).append('\n');
      }
      return all.toString();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      if (!name.startsWith("circuitverdict.")) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      if (loaded != null) {
        return loaded;
      }
      try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
        byte[] bytes = in.readAllBytes();
        return defineClass(name, bytes, 0, bytes.length);
      } catch (IOException e) {
        throw new ClassNotFoundException(name, e);
      }
    }
  }

  @Override
  public InputStream getResourceAsStream(String name) {
    return name.equals(path)
        ? new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))
        : super.getResourceAsStream(name);
  }
}
